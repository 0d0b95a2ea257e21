// A browser driven over the bare debugging protocol. The usual driver makes every page believe that it has the focus;
// here a page that is left really gets blur and visibilitychange. Also the place for real key and touch events by code.
import { spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { inject } from 'vitest';

type Fields = Record<string, unknown>;
type Send = (method: string, params?: Fields) => Promise<Fields>;

export interface RawPage {
  send: Send;
  /** The value of an expression in the page; promises are waited for. */
  evaluate<T>(expression: string): Promise<T>;
  /** Waits until the expression is truthy. */
  until(expression: string, withinMs?: number): Promise<void>;
  /** Brings another tab to the front: this page loses focus and is hidden. */
  leave(): Promise<void>;
  comeBack(): Promise<void>;
}

export interface RawBrowser {
  open(url: string): Promise<RawPage>;
  close(): Promise<void>;
}

export async function rawBrowser(): Promise<RawBrowser> {
  const { path, flags } = inject('chromium');
  const profile = await mkdtemp(join(tmpdir(), 'evenhand-browser-'));
  const child = spawn(path, ['--headless=new', ...flags, `--user-data-dir=${profile}`, '--remote-debugging-pipe', 'about:blank'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
  });
  const gone = new Promise<void>((done) => child.once('exit', () => done()));
  const call = protocol(child.stdio[3] as Writable, child.stdio[4] as Readable);
  const newTab = async (url: string): Promise<string> => String((await call('Target.createTarget', { url })).targetId);
  const other = await newTab('about:blank');
  return {
    async open(url) {
      const own = await newTab(url);
      const sessionId = String((await call('Target.attachToTarget', { targetId: own, flatten: true })).sessionId);
      const show = (targetId: string): Promise<Fields> => call('Target.activateTarget', { targetId });
      const page = rawPage((method, params) => call(method, params, sessionId), () => show(own), () => show(other));
      await page.until("document.readyState === 'complete' && location.href !== 'about:blank'");
      return page;
    },
    async close() {
      await call('Browser.close');
      await gone;
      await rm(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

function rawPage(send: Send, showThis: () => Promise<Fields>, showOther: () => Promise<Fields>): RawPage {
  const evaluate = async <T>(expression: string): Promise<T> => {
    const answer = await send('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true });
    if (answer.exceptionDetails) throw new Error(`${expression}: ${JSON.stringify(answer.exceptionDetails)}`);
    return (answer.result as { value: T }).value;
  };
  const until = async (expression: string, withinMs = 10_000): Promise<void> => {
    const deadline = performance.now() + withinMs;
    while (!(await evaluate<boolean>(`Boolean(${expression})`).catch(betweenDocuments))) {
      if (performance.now() > deadline) throw new Error(`Not within ${withinMs} ms: ${expression}`);
      await new Promise((done) => setTimeout(done, 10));
    }
  };
  return {
    send,
    evaluate,
    until,
    leave: () => showOther().then(() => until("document.visibilityState === 'hidden' && !document.hasFocus()")),
    comeBack: () => showThis().then(() => until("document.visibilityState === 'visible' && document.hasFocus()")),
  };
}

/** While a page is replaced by the next one nothing can be asked of it. */
function betweenDocuments(problem: Error): false {
  if (/execution context|navigated or closed/.test(problem.message)) return false;
  throw problem;
}

/** Messages are JSON texts, each closed by a NUL; answers carry the number of their question. */
function protocol(toBrowser: Writable, fromBrowser: Readable) {
  const waiting = new Map<number, { done: (result: Fields) => void; fail: (problem: Error) => void }>();
  let asked = 0;
  let unread = '';
  fromBrowser.setEncoding('utf8');
  fromBrowser.on('data', (text: string) => {
    const messages = (unread + text).split('\0');
    unread = messages.pop() ?? '';
    for (const message of messages) hear(JSON.parse(message));
  });
  fromBrowser.on('close', () => {
    for (const { fail } of waiting.values()) fail(new Error('The browser is gone.'));
    waiting.clear();
  });

  function hear(message: { id?: number; result?: Fields; error?: { message: string } }): void {
    const question = message.id === undefined ? undefined : waiting.get(message.id);
    if (message.id === undefined || !question) return; // an event: nobody here listens
    waiting.delete(message.id);
    if (message.error) question.fail(new Error(message.error.message));
    else question.done(message.result ?? {});
  }

  return (method: string, params: Fields = {}, sessionId?: string): Promise<Fields> =>
    new Promise((done, fail) => {
      const id = ++asked;
      waiting.set(id, { done, fail });
      toBrowser.write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
    });
}
