/** C0 and C1 control bytes, delete, line separators, and the marks that turn the reading direction or have no width. */
const unseen = /[\u0000-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/g;

const escaped = (mark: string): string => {
  const code = mark.charCodeAt(0);
  return code < 256 ? `\\x${code.toString(16).padStart(2, '0')}` : `\\u${code.toString(16).padStart(4, '0')}`;
};

/**
 * Text from a stream or a file as it may stand on a screen or in a document: what would act on a terminal or hide in print is
 * shown as an escape. Doing it twice changes nothing.
 */
export const visible = (text: string): string => text.replace(unseen, escaped);
