/** What is watched at every door: no throw, an answer in bounded time, problems a person can read, and nothing left behind. */
import type { Read } from '../../src/text/index.js';
import { MOST_PROBLEMS } from '../../src/text/problem.js';
import { must } from './promises.js';

/** Time of the processor, ms: a busy machine is not a hang. */
const LONGEST_MS = 4000;
const clean = [Object.prototype, Array.prototype, Function.prototype].map((one) => Reflect.ownKeys(one).length).join();

/** @param door named in what is thrown */
export function watched<T>(door: string, work: () => T): T {
  const before = process.cpuUsage();
  const answer = work();
  const { user, system } = process.cpuUsage(before);
  must((user + system) / 1000 < LONGEST_MS, `${door} took ${Math.round((user + system) / 1000)} ms`);
  untouched(door);
  return answer;
}

export function untouched(door: string): void {
  must([Object.prototype, Array.prototype, Function.prototype].map((one) => Reflect.ownKeys(one).length).join() === clean, `${door} has changed what every object has`);
}

/** Reads, looks at the problems, and reads what was taken once more: it is taken again, as it is. */
export function readTwice<T>(door: string, text: string, read: (text: string) => Read<T>): T | null {
  const one = watched(door, () => read(text));
  if (!one.ok) {
    must(one.problems.length > 0 && one.problems.length <= MOST_PROBLEMS, `${door}: ${one.problems.length} problems`);
    for (const { line, column, path, found, allowed } of one.problems) {
      must(line > 0 && column > 0, `${door}: a problem at ${line}:${column}`);
      must(!/\p{Cc}|[\u2028\u2029]/u.test(`${path}${found}${allowed}`), `${door}: a problem of more than one line: ${JSON.stringify({ path, found, allowed })}`);
      must(path.length + found.length < 900 && allowed !== '' && allowed.length < 1500, `${door}: a problem too long to read: ${path.length} ${found.length} ${allowed.length}`);
    }
    return null;
  }
  const written = JSON.stringify(one.value);
  const again = watched(door, () => read(written));
  if (!again.ok) throw new Error(`${door} refuses what it took: ${JSON.stringify(again.problems.slice(0, 2))}`);
  must(JSON.stringify(again.value) === written, `${door} reads what it took as something else`);
  return one.value;
}
