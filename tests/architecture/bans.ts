// What may not stand in sim: clocks, dice, the page, the network, languages of people, waiting, and arithmetic that differs between engines.
import { lineOf, walk, type Node, type Source } from './source.js';

/** Bit-identical in every engine tried (the project's performance notes, "Determinism"). */
export const allowedMath = ['sqrt', 'abs', 'min', 'max', 'floor', 'imul', 'fround'];

/** May use all of Math but its dice, and `**`: nothing they compute is stored. */
const freeMath = ['sim/stats/', 'sim/wing/'];

const bannedNames = new Map(
  Object.entries({
    'a clock': ['Date', 'performance', 'Temporal'],
    'a timer': ['setTimeout', 'setInterval', 'setImmediate', 'clearTimeout', 'clearInterval', 'requestAnimationFrame', 'queueMicrotask'],
    dice: ['crypto'],
    'the machine': ['process', 'console', 'require', 'module', 'Buffer', 'Worker', 'Atomics', 'SharedArrayBuffer', 'WebAssembly'],
    'the network': ['fetch', 'XMLHttpRequest', 'WebSocket', 'EventSource', 'BroadcastChannel'],
    'the page': ['globalThis', 'window', 'self', 'document', 'navigator', 'localStorage', 'sessionStorage', 'indexedDB'],
    waiting: ['Promise'],
    'the language of people': ['Intl'],
    'code from text': ['eval', 'Function'],
    'the collector': ['WeakRef', 'FinalizationRegistry'],
  }).flatMap(([what, names]) => names.map((name) => [name, what] as const)),
);

const bannedMembers: [RegExp, string][] = [
  [/^toLocale|^localeCompare$/, 'the language of people'],
  [/^constructor$/, 'a way to code from text'],
];

export function banProblems(source: Source): string[] {
  if (!source.path.startsWith('sim/')) return [];
  const free = freeMath.some((place) => source.path.startsWith(place));
  const found: string[] = [];
  walk(source.program, (node, parent, key) => {
    const what = nameProblem(node, parent, key) ?? mathProblem(node, parent, key, free) ?? memberProblem(node) ?? formProblem(node, free);
    if (what !== null) found.push(`${source.path}:${lineOf(source.text, node.start)}: ${what}`);
  });
  return found;
}

/** A name that stands for a thing, not one that is a mere label: `plan.performance` and `{ document: 1 }` are labels. */
function isThing(node: Node, parent: Node | null, key: string): boolean {
  if (node.type !== 'Identifier') return false;
  if (parent === null || parent.computed === true) return true;
  if (['key', 'label', 'imported', 'exported'].includes(key)) return false;
  return !(key === 'property' && parent.type === 'MemberExpression') && !(key === 'right' && parent.type === 'TSQualifiedName');
}

function nameProblem(node: Node, parent: Node | null, key: string): string | null {
  if (!isThing(node, parent, key)) return null;
  const what = bannedNames.get(String(node.name));
  return what === undefined ? null : `${String(node.name)} is ${what}`;
}

function mathProblem(node: Node, parent: Node | null, key: string, free: boolean): string | null {
  if (!isThing(node, parent, key) || node.name !== 'Math') return null;
  const member = parent?.type === 'MemberExpression' && key === 'object' ? memberName(parent) : null;
  if (member === null) return 'Math only as Math.name, so that its members can be counted';
  return (free && member !== 'random') || allowedMath.includes(member) ? null : `Math.${member} is not for sim`;
}

function memberProblem(node: Node): string | null {
  if (node.type !== 'MemberExpression') return null;
  const name = memberName(node);
  const banned = name === null ? undefined : bannedMembers.find(([pattern]) => pattern.test(name));
  return banned === undefined ? null : `.${name} is ${banned[1]}`;
}

/** `a.b` and `a['b']`; null when it is only known later. */
function memberName(node: Node): string | null {
  const property = node.property as Node;
  if (node.computed !== true) return String(property.name);
  return property.type === 'Literal' && typeof property.value === 'string' ? property.value : null;
}

function formProblem(node: Node, free: boolean): string | null {
  if (node.async === true) return 'async: sim does not wait';
  if (node.type === 'AwaitExpression' || node.await === true) return 'await: sim does not wait';
  if (node.type === 'ImportExpression') return 'import(): sim is loaded at once';
  if (node.type === 'MetaProperty' && (node.meta as Node).name === 'import') return 'import.meta: sim does not know where it lies';
  if (!free && (node.operator === '**' || node.operator === '**=')) return `${node.operator} differs between engines`;
  return null;
}
