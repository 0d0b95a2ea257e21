/** A text as a tree of JSON values with their places, or what is wrong with its grammar (JSON, RFC 8259, with comments). */
import { type Node, type ParseError, parseTree, printParseErrorCode } from 'jsonc-parser';
import { type Finding, quoted } from './problem.js';
import { scan } from './scan.js';

export type Tree = { ok: true; root: Node } | { ok: false; findings: Finding[] };

/** What the grammar asks for where the parser stumbled, by the parser's name of the stumble. */
const EXPECTED: Readonly<Record<string, string>> = {
  InvalidSymbol: 'a text in double quotes, a number, true, false, null, [ or {',
  InvalidNumberFormat: 'a number as JSON writes it: 12, -0.5, 1e3',
  PropertyNameExpected: 'a key in double quotes',
  ValueExpected: 'a value',
  ColonExpected: 'a colon behind the key',
  CommaExpected: 'a comma between entries',
  CloseBraceExpected: 'a closing }',
  CloseBracketExpected: 'a closing ]',
  EndOfFileExpected: 'nothing behind the value',
  InvalidCommentToken: 'a comment as // or /* */',
  UnexpectedEndOfComment: 'a closing */',
  UnexpectedEndOfString: 'a closing double quote on the same line',
  UnexpectedEndOfNumber: 'a digit',
  InvalidUnicode: 'four hexadecimal digits behind \\u',
  InvalidEscapeCharacter: 'one of \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u behind a backslash',
  InvalidCharacter: 'control characters as escapes: \\n, \\t, \\u0000',
};

/** Reads the grammar. Never throws; one stumble a line is told, as the rest of a line mostly follows from its first. */
export function readTree(text: string): Tree {
  const { refused, trailingCommas } = scan(text);
  if (refused !== null) return { ok: false, findings: [refused] };
  const errors: ParseError[] = [];
  const root = parseTree(text, errors, { disallowComments: false, allowTrailingComma: false, allowEmptyContent: false });
  if (errors.length === 0 && root !== undefined) return { ok: true, root };
  const commas = [...trailingCommas.values()].map((offset) => finding(offset, 'a comma with nothing behind it', 'no comma behind the last entry'));
  const stumbles = errors.filter((error, index) => !trailingCommas.has(error.offset) && !follows(text, errors[index - 1], error)).map((error) => stumble(text, error));
  return { ok: false, findings: firstOfEachLine(text, [...commas, ...stumbles]) };
}

/** Whether nothing stands between two stumbles: where a word is none, the value that is missed there is the same mistake. */
function follows(text: string, before: ParseError | undefined, { offset }: ParseError): boolean {
  if (before === undefined) return false;
  const end = before.offset + before.length;
  return end <= offset && text.slice(end, offset).trim() === '';
}

function stumble(text: string, { error, offset, length }: ParseError): Finding {
  const seen = text.slice(offset, offset + length).trim();
  const name = printParseErrorCode(error);
  return finding(offset, seen === '' ? 'the end of the file' : quoted(seen), EXPECTED[name] ?? 'JSON with comments');
}

const finding = (offset: number, found: string, allowed: string): Finding => ({ offset, say: () => ({ path: '', found, allowed }) });

function firstOfEachLine(text: string, findings: Finding[]): Finding[] {
  const sorted = [...findings].sort((a, b) => a.offset - b.offset);
  return sorted.filter(({ offset }, index) => {
    const before = sorted[index - 1];
    return before === undefined || /[\r\n]/.test(text.slice(before.offset, offset));
  });
}
