/**
 * What must not reach a terminal or a page as it is: C0 and C1 controls, line and paragraph separators, marks that turn the
 * writing direction (Unicode Standard Annex 9), and halves of a surrogate pair.
 */
const unsafe =
  /[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** Text as a person may be shown it: one line, every control character written out as \xNN or \uNNNN. */
export function visible(text: string): string {
  return text.replace(unsafe, (character) => {
    const code = character.charCodeAt(0);
    return code < 0x100 ? hexByte(code) : `\\u${code.toString(16).padStart(4, '0')}`;
  });
}

/**
 * Bytes, held as latin1 characters, as printable ASCII that `unescapeBytes` turns back exactly: backslash, controls and
 * everything from 0x7f on become \xNN.
 */
export const escapeBytes = (text: string): string => (isPlain(text) ? text : escaped(text));

const isPlain = (text: string): boolean => /^[\x20-\x5b\x5d-\x7e]*$/.test(text);

const escaped = (text: string): string =>
  text.replace(/[^\x20-\x5b\x5d-\x7e]/g, (character) => hexByte(character.charCodeAt(0) & 0xff));

/** The latin1 characters that `escapeBytes` was given; undefined where the text could not have come from it. */
export function unescapeBytes(text: string): string | undefined {
  if (isPlain(text)) return text;
  const bytes = text.replace(/\\x([0-9a-f]{2})/g, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
  return escapeBytes(bytes) === text ? bytes : undefined;
}

const hexByte = (code: number) => `\\x${code.toString(16).padStart(2, '0')}`;
