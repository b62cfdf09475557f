import { LineCounter, parseDocument, type YAMLError } from 'yaml';
import { cutShort, quoted, type Wrong } from './problem.ts';
import { type Tree, treeOf } from './tree.ts';

/** 64 inputs fully described take some 40 KiB. */
export const mostCharacters = 128 * 1024;

const said: Readonly<Record<string, Pick<Wrong, 'allowed' | 'tryNext'>>> = {
  TAB_AS_INDENT: { allowed: 'spaces before an entry', tryNext: 'put spaces in place of the tab' },
  BAD_INDENT: { allowed: 'entries of one level in one column', tryNext: 'line the entries up' },
  MULTIPLE_DOCS: { allowed: 'one document', tryNext: 'take out what follows the second ---' },
  BLOCK_AS_IMPLICIT_KEY: {
    allowed: 'one `key: value` on a line',
    tryNext: 'put the value in quotes if it has a colon',
  },
  MULTILINE_IMPLICIT_KEY: {
    allowed: '`key: value`',
    tryNext: 'put a colon after the name, or a # before a note',
  },
  BAD_SCALAR_START: { allowed: 'a value in quotes', tryNext: 'put the value in quotes' },
  RESOURCE_EXHAUSTION: { allowed: 'a few levels', tryNext: 'start again from a starter file' },
  TAG_RESOLVE_FAILED: { allowed: 'values without a tag', tryNext: 'take the ! and the word after it out' },
  MISSING_CHAR: { allowed: 'closed brackets and quotes', tryNext: 'close it on this line or before' },
};
/** Where the parser's own words would say what to do to a programmer. */
const foundIn: Readonly<Record<string, string>> = {
  MULTILINE_IMPLICIT_KEY: 'a line without a colon',
  UNEXPECTED_TOKEN: 'a sign that has no place here',
  BLOCK_AS_IMPLICIT_KEY: 'a second colon in one entry',
  BAD_SCALAR_START: 'a value that begins with a sign of YAML’s own',
  MULTIPLE_DOCS: 'a second document',
  RESOURCE_EXHAUSTION: 'levels without end',
  TAG_RESOLVE_FAILED: 'a tag',
};
const otherwise = { allowed: 'YAML 1.2', tryNext: 'compare the lines before it with a starter file' };

/** A file with more breaks than this is no YAML: they come from the first, or from what the file is. */
const mostBreaksShown = 3;
/** Nobody counts further. */
const mostBreaksCounted = 200;

export interface Syntax {
  readonly tree: Tree;
  readonly lines: LineCounter;
  /** The offset of the first place that could not be read; what stands after it is not to be trusted. */
  readonly brokenAt: number | undefined;
}

/** Reads YAML without a throw: every syntax error is said, what could be read is handed on. Values stay text, as written. */
export function syntaxOf(text: string, say: (wrong: Wrong) => void): Syntax {
  const lines = new LineCounter();
  lines.addNewLine(0);
  const nothing: Tree = { kind: 'nothing', at: 0 };
  const unreadable = unreadableText(text);
  if (unreadable) {
    for (let at = text.indexOf('\n'); at >= 0 && at <= unreadable.offset; at = text.indexOf('\n', at + 1))
      lines.addNewLine(at + 1);
    say({ path: [], ...unreadable });
    return { tree: nothing, lines, brokenAt: 0 };
  }
  return parsed(text, say);
}

function parsed(text: string, say: (wrong: Wrong) => void): Syntax {
  const lines = new LineCounter();
  try {
    const document = parseDocument(text, {
      schema: 'failsafe',
      merge: false,
      uniqueKeys: false,
      prettyErrors: false,
      logLevel: 'error',
      lineCounter: lines,
    });
    const errors = onePerPlace([...document.errors, ...document.warnings]);
    for (const wrong of breaksOf(errors, text)) say({ path: [], ...wrong });
    const brokenAt = firstOf(document.errors);
    // What stands behind a break was perhaps meant otherwise.
    const before = (wrong: Wrong) => {
      if (brokenAt === undefined || (wrong.offset ?? 0) < brokenAt) say(wrong);
    };
    const tree = treeOf(document.contents, before, [], document.contents?.range?.[0] ?? 0);
    return { tree, lines, brokenAt };
  } catch {
    say({ path: [], offset: 0, found: 'text that cannot be taken apart', ...otherwise });
    return { tree: { kind: 'nothing', at: 0 }, lines, brokenAt: 0 };
  }
}

function breaksOf(errors: readonly YAMLError[], text: string): readonly Omit<Wrong, 'path'>[] {
  const [first, second] = errors.toSorted((a, b) => a.pos[0] - b.pos[0]);
  if (!first || !second || errors.length <= mostBreaksShown) return errors.map((each) => inWords(each, text));
  const more = errors.length - 1;
  return [
    inWords(first, text),
    {
      offset: second.pos[0],
      found: `${more >= mostBreaksCounted ? `${mostBreaksCounted} and more` : more} further places that are no YAML`,
      allowed: 'YAML 1.2',
      tryNext: 'see whether it is the right file; if it is, mend the first place and check it again',
    },
  ];
}

/** One mistake can be reported many times over, most of all a nesting without end. */
function onePerPlace(errors: readonly YAMLError[]): readonly YAMLError[] {
  const byPlace = new Map<number, YAMLError>();
  for (const error of errors) {
    if (error.code === 'RESOURCE_EXHAUSTION') return [error];
    if (!byPlace.has(error.pos[0])) byPlace.set(error.pos[0], error);
    if (byPlace.size > mostBreaksCounted) break;
  }
  return [...byPlace.values()];
}

const firstOf = (errors: readonly YAMLError[]): number | undefined =>
  errors.reduce<number | undefined>(
    (first, { pos }) => (first === undefined ? pos[0] : Math.min(first, pos[0])),
    undefined,
  );

function inWords(error: YAMLError, text: string): Omit<Wrong, 'path'> {
  const line = text.slice(error.pos[0], error.pos[0] + 200).split('\n', 1)[0] ?? '';
  const found = `${foundIn[error.code] ?? cutShort(error.message.split('\n', 1)[0] ?? '')}${line.trim() === '' ? '' : `, at ${quoted(line.trim())}`}`;
  return { offset: error.pos[0], found, ...(said[error.code] ?? otherwise) };
}

/** Bytes of another encoding leave marks in the text; they are found before YAML makes something of them. */
function unreadableText(
  text: string,
): { offset: number; found: string; allowed: string; tryNext: string } | undefined {
  if (text.length > mostCharacters)
    return {
      offset: 0,
      found: `${text.length} characters`,
      allowed: `${mostCharacters} at most`,
      tryNext: 'keep to what a machine file holds; notes belong elsewhere',
    };
  const offset = text.search(/[\u0000\ufffd]/);
  if (offset < 0) return undefined;
  return {
    offset,
    found: 'bytes that are not UTF-8 text',
    allowed: 'UTF-8',
    tryNext: 'save the file as UTF-8 in the editor',
  };
}
