import { visible } from '../model/visible.ts';

/** Text as it stands, for a Markdown reader: nothing in it may become markup, a link or an entity, and it keeps to its line. */
export function plain(text: string): string {
  return visible(text)
    .replace(/[\\`*_[\]|~#]/g, '\\$&')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/:\/\//g, '&#58;//')
    .replace(/www\./gi, (found) => `${found.slice(0, 3)}&#46;`)
    .replace(/@/g, '&#64;')
    .replace(/^(\s*)([-+=]|\d+[.)])/, (_all, space: string, mark: string) =>
      /^\d/.test(mark) ? `${space}${mark.slice(0, -1)}\\${mark.slice(-1)}` : `${space}\\${mark}`,
    );
}
