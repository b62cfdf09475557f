/** The least piece of a line: a run of characters between separators, or one separator. */
export type Piece =
  | { readonly kind: 'atom'; readonly text: string; readonly quoted: boolean }
  | { readonly kind: 'space' | 'key' | 'comma' | 'bar' | 'open' | 'close' };

const separators: ReadonlyMap<string, 'space' | 'key' | 'comma' | 'bar' | 'open' | 'close'> = new Map([
  [' ', 'space'],
  ['\t', 'comma'],
  [':', 'key'],
  ['=', 'key'],
  [',', 'comma'],
  ['/', 'comma'],
  ['&', 'comma'],
  [';', 'bar'],
  ['|', 'bar'],
  ['(', 'open'],
  ['[', 'open'],
  ['{', 'open'],
  ['<', 'open'],
  [')', 'close'],
  [']', 'close'],
  ['}', 'close'],
  ['>', 'close'],
]);
const isLetter = (character: string | undefined) => character !== undefined && /[a-z]/i.test(character);

/** Colour and cursor sequences (ECMA-48) and other control characters, and the sum behind a star, say nothing about a machine. */
const plain = (line: string): string =>
  line
    .replace(/\x1b\[[0-?]*[ -/]*[@-~]/g, '')
    .replace(/[\x00-\x08\x0a-\x1f\x7f]/g, ' ')
    .replace(/\*[0-9a-f]{2}\s*$/i, '')
    .trim();

/** Cuts a line into its pieces, in one pass. */
export function piecesOf(line: string): readonly Piece[] {
  const text = plain(line);
  const pieces: Piece[] = [];
  let run = '';
  const end = () => {
    const trimmed = run.replace(/^[$@#]+(?=[a-z0-9])/i, '').replace(/(?<=[a-z0-9])[.!?]+$/i, '');
    if (trimmed !== '') pieces.push({ kind: 'atom', text: trimmed, quoted: false });
    run = '';
  };
  for (let i = 0; i < text.length; i++) {
    const character = text.charAt(i);
    const closing = character === '"' || character === "'" ? text.indexOf(character, i + 1) : -1;
    const kind = kindOf(character, text[i - 1], text[i + 1]);
    if (run === '' && closing > i) {
      pieces.push({ kind: 'atom', text: text.slice(i + 1, closing), quoted: true });
      i = closing;
    } else if (kind) {
      end();
      pieces.push({ kind });
    } else run += character;
  }
  end();
  return pieces;
}

/** A plus between words joins them; before a figure it is a sign. */
const kindOf = (character: string, before: string | undefined, after: string | undefined) =>
  character === '+' && isLetter(before) && isLetter(after) ? ('comma' as const) : separators.get(character);
