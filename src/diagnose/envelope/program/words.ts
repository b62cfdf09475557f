/** One word of a program block: a letter and its number. */
export interface Word {
  readonly letter: string;
  readonly value: number;
}

export interface Block {
  /** From 1, as an editor counts. */
  readonly line: number;
  readonly text: string;
  readonly words: readonly Word[];
  /** Begins with a slash: skipped where the operator has set block delete. */
  readonly mayBeSkipped: boolean;
  /** What could not be read as words: a formula, a parameter, an o-word, stray characters. */
  readonly unread: Unread | undefined;
}

export type Unread = 'formula' | 'parameter' | 'subprogram' | 'stray-characters' | 'open-comment';

const word = /^([A-Z])([-+]?(?:\d+\.?\d*|\.\d+))/;

/** A line of RS-274 as words (NISTIR 6556, 3.3: spaces and case do not matter, comments stand in parentheses); undefined where it is empty. */
export function blockOf(text: string, line: number): Block | undefined {
  const plain = withoutComments(text);
  if (plain === undefined) return { line, text, words: [], mayBeSkipped: false, unread: 'open-comment' };
  let rest = plain.replace(/\s+/g, '').toUpperCase();
  if (rest === '' || /^%/.test(rest)) return undefined;
  const mayBeSkipped = rest.startsWith('/');
  rest = rest.replace(/^\/\d?/, '');
  const words: Word[] = [];
  for (let match = word.exec(rest); match; match = word.exec(rest)) {
    words.push({ letter: match[1] ?? '', value: Number(match[2]) });
    rest = rest.slice(match[0].length);
  }
  const meant = words.filter(({ letter }) => letter !== 'N');
  if (meant.length === 0 && rest === '') return undefined;
  const unread =
    isSubprogram(words) || /^O/.test(rest) ? 'subprogram' : rest === '' ? undefined : unreadOf(rest);
  return { line, text: text.trim(), words: meant, mayBeSkipped, unread };
}

/** Comments run to their parenthesis or, after a semicolon, to the end of the line; undefined where a parenthesis is never closed. */
function withoutComments(text: string): string | undefined {
  const [beforeSemicolon = ''] = text.replace(/\([^()]*\)/g, ' ').split(';');
  return beforeSemicolon.includes('(') ? undefined : beforeSemicolon;
}

const isSubprogram = (words: readonly Word[]): boolean => words.some(({ letter }) => letter === 'O');

function unreadOf(rest: string): Unread {
  if (/^[A-Z]?[-+]?#/.test(rest)) return 'parameter';
  return /^[A-Z]?[-+]?\[|^[A-Z](?:SIN|COS|TAN|SQRT|ABS|ATAN|ROUND|FIX|FUP|EXP|LN|ACOS|ASIN)/.test(rest)
    ? 'formula'
    : 'stray-characters';
}
