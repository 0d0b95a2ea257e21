// Every name that a face of the package exports says what it is, and every number in it says in what.
import { lineOf, ourFile, walk, type Node, type Source } from './source.js';

/** What a name ends in when the name itself says in what it is counted: `massT`, `atTick`, `driftDegPerS`. */
const UNITS = /(Deg|Rad|Kt|Ft|Nm|Mm|M|Min|S|Ms|Ticks?|Pct|T|Kg|Per[A-Z]\w*)$|^(ticks?|seed|count|deg|kt)$/;

/** Fewer words than this say no more than the name does. */
const FEWEST_WORDS = 4;

/**
 * Each exported name without a docstring before its declaration, each that throws and does not say so, and each number below
 * it that neither its own name nor a comment explains.
 */
export function faceProblems(sources: Source[], faces: string[]): string[] {
  const house = new House(sources);
  const found = faces.flatMap((face) => house.exportsOf(face)).flatMap((declared) => [docProblem, throwProblem, numberProblems].flatMap((problems) => problems(declared)));
  return [...new Set(found)];
}

interface Declared {
  name: string;
  source: Source;
  /** The whole statement, `export` and all. */
  node: Node;
}

class House {
  readonly #byPath: Map<string, Source>;

  constructor(sources: Source[]) {
    this.#byPath = new Map(sources.map((source) => [source.path, source]));
  }

  exportsOf(path: string): Declared[] {
    return statements(this.#at(path)).flatMap((node) => {
      if (node.type === 'ExportAllDeclaration') throw new Error(`${path}: a face names what it exports`);
      if (node.type !== 'ExportNamedDeclaration') return [];
      return [...namesOf(node), ...passesOf(node).map(({ outside }) => outside)].map((name) => this.#declared(path, name));
    });
  }

  /** Follows a name through whatever hands it on to the statement that makes it. */
  #declared(path: string, name: string): Declared {
    const source = this.#at(path);
    for (const node of statements(source)) {
      if (namesOf(node).includes(name)) return { name, source, node };
      const pass = passesOf(node).find(({ outside }) => outside === name);
      if (pass === undefined) continue;
      const from = (node.source as Node | null | undefined)?.value;
      if (typeof from === 'string') return this.#declared(this.#file(source, from), pass.inside);
      if (pass.inside !== name) return this.#declared(path, pass.inside);
    }
    throw new Error(`${path}: ${name} is not declared here`);
  }

  #file(source: Source, from: string): string {
    const to = ourFile(source, from, new Set(this.#byPath.keys()));
    if (to === null) throw new Error(`${source.path}: there is no ${from}`);
    return to;
  }

  #at(path: string): Source {
    const source = this.#byPath.get(path);
    if (source === undefined) throw new Error(`there is no ${path}`);
    return source;
  }
}

const statements = (source: Source): Node[] => source.program.body as Node[];

const nameOf = (node: Node): string => String(node.name);

/** Names that an import or an export hands on: as they are known behind it, and where they come from. */
function passesOf(node: Node): { outside: string; inside: string }[] {
  const isImport = node.type === 'ImportDeclaration';
  return ((node.specifiers as Node[] | undefined) ?? []).flatMap(({ local, imported, exported }) => {
    const [outside, inside] = (isImport ? [local, imported] : [exported, local]) as [Node, Node | undefined];
    return inside === undefined ? [] : [{ outside: nameOf(outside), inside: nameOf(inside) }];
  });
}

/** What a statement declares, exported or not. */
function namesOf(statement: Node): string[] {
  const node = (statement.declaration as Node | null | undefined) ?? statement;
  if (node.type === 'VariableDeclaration') return (node.declarations as Node[]).map(({ id }) => nameOf(id as Node));
  return node.type.endsWith('Declaration') && node.id ? [nameOf(node.id as Node)] : [];
}

function docProblem({ name, source: { path, text }, node }: Declared): string[] {
  const words = docBefore(text, node.start)?.match(/[\p{L}\d]+/gu)?.length ?? 0;
  return words >= FEWEST_WORDS ? [] : [`${path}:${lineOf(text, node.start)}: ${name} has no docstring`];
}

/** What a function throws itself; what the ones it calls throw is theirs to say. */
function throwProblem({ name, source: { path, text }, node: statement }: Declared): string[] {
  let throws = false;
  walk(statement, ({ type }) => { throws ||= type === 'ThrowStatement'; });
  return !throws || /\bthrows\b/i.test(docBefore(text, statement.start) ?? '') ? [] : [`${path}:${lineOf(text, statement.start)}: ${name} does not say that it throws`];
}

/** The text of the docstring that ends right before a place; null where there is none. The one at the head of a file is the file's. */
function docBefore(text: string, at: number): string | null {
  const before = text.slice(0, at);
  const open = before.lastIndexOf('/**');
  return open <= 0 ? null : (/^\/\*\*((?:(?!\*\/)[^])*)\*\/\s*$/.exec(before.slice(open))?.[1] ?? null);
}

/**
 * Numbers that a function takes, and those among the fields of a type or of what a function takes and gives. By name in the
 * docstring every number is explained; a field also by a comment on itself, on the number before it (which it then shares),
 * or on what it stands inside.
 */
function numberProblems({ name, source: { path, text }, node: statement }: Declared): string[] {
  const doc = docBefore(text, statement.start) ?? '';
  const found: string[] = [];
  const ask = (node: Node, of: string): void => {
    if (!UNITS.test(of) && !isSaid(of, doc)) found.push(`${path}:${lineOf(text, node.start)}: ${name}.${of} is a number of what?`);
  };
  for (const parameter of functionsOf(statement).flatMap(({ params }) => params as Node[])) {
    const given = parameter.type === 'AssignmentPattern' ? (parameter.left as Node) : parameter;
    const isUsual = given !== parameter && typeof (parameter.right as Node).value === 'number';
    if (given.type === 'Identifier' && (isNumber(given) || isUsual)) ask(given, nameOf(given));
  }
  const look = (node: Node, before: Node | null): void => {
    if (node.type === 'TSPropertySignature') {
      if (isCommented(text, node)) return;
      const isShared = before !== null && isNumber(before) && isCommented(text, before);
      if (isNumber(node) && !isShared) ask(node, nameOf(node.key as Node));
    }
    for (const value of Object.values(node)) {
      const row = (Array.isArray(value) ? value : [value]).filter(isNode);
      row.forEach((child, at) => look(child, row[at - 1] ?? null));
    }
  };
  look(statement, null);
  return found;
}

/** The functions that a statement exports: declared, or given to a name. */
function functionsOf(statement: Node): Node[] {
  const node = (statement.declaration as Node | null | undefined) ?? statement;
  const made = node.type === 'VariableDeclaration' ? (node.declarations as Node[]).map(({ init }) => init as Node | null) : [node];
  return made.filter((one) => one?.type === 'FunctionDeclaration' || one?.type === 'ArrowFunctionExpression') as Node[];
}

const isNode = (value: unknown): value is Node => value !== null && typeof value === 'object' && 'type' in value;

/** A number, a list of them, or either beside something else. */
function isNumber(field: Node): boolean {
  const type = (field.typeAnnotation as Node | null | undefined)?.typeAnnotation as Node | undefined;
  const holds = (node: Node): boolean => {
    if (node.type === 'TSTypeOperator') return holds(node.typeAnnotation as Node);
    if (node.type === 'TSArrayType') return holds(node.elementType as Node);
    if (node.type === 'TSTupleType') return (node.elementTypes as Node[]).some(holds);
    return node.type === 'TSNumberKeyword' || (node.type === 'TSUnionType' && (node.types as Node[]).some(holds));
  };
  return type !== undefined && holds(type);
}

const isSaid = (field: string, doc: string): boolean => new RegExp(`\\b${field}\\b`).test(doc);

/** Before it, or behind it on its line. */
const isCommented = (text: string, node: Node): boolean => docBefore(text, node.start) !== null || /^[^\n]*\/\//.test(text.slice(node.start));
