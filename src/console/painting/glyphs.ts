/** The signs the screen is made of: one set for terminals that show block signs, one for those that show letters only. */
export interface Glyphs {
  readonly full: string;
  /** Halves and quarters of a cell can be drawn. */
  readonly halves: boolean;
  readonly active: string;
  readonly quiet: string;
  readonly unknown: string;
  readonly asked: string;
  readonly seen: string;
  readonly other: string;
  readonly caution: string;
  readonly strip: { readonly active: string; readonly quiet: string; readonly flickers: string };
}

export const blockGlyphs: Glyphs = {
  full: '█',
  halves: true,
  active: '■',
  quiet: '□',
  unknown: '?',
  asked: '▶',
  seen: '◆',
  other: '◇',
  caution: '▲',
  strip: { active: '▆', quiet: '▁', flickers: '▒' },
};

export const letterGlyphs: Glyphs = {
  full: '#',
  halves: false,
  active: '#',
  quiet: '-',
  unknown: '?',
  asked: '>',
  seen: '*',
  other: 'o',
  caution: '!',
  strip: { active: '#', quiet: '_', flickers: '%' },
};

/** By what the environment says of its character set (POSIX: LC_ALL before LC_CTYPE before LANG). */
export function glyphsFor(env: Readonly<Record<string, string | undefined>>): Glyphs {
  const locale = env['LC_ALL'] || env['LC_CTYPE'] || env['LANG'] || '';
  return /utf-?8/i.test(locale) ? blockGlyphs : letterGlyphs;
}
