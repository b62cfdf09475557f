/** Capitals of our own, five dots high, drawn so that no two can be taken for each other from two metres. Rows from the top. */
const drawn = {
  A: '.##. #..# #### #..# #..#',
  B: '###. #..# ###. #..# ###.',
  C: '.### #... #... #... .###',
  D: '###. #..# #..# #..# ###.',
  E: '#### #... ###. #... ####',
  F: '#### #... ###. #... #...',
  G: '.### #... #.## #..# .###',
  H: '#..# #..# #### #..# #..#',
  I: '### .#. .#. .#. ###',
  J: '..## ...# ...# #..# .##.',
  K: '#..# #.#. ##.. #.#. #..#',
  L: '#... #... #... #... ####',
  M: '#...# ##.## #.#.# #...# #...#',
  N: '#...# ##..# #.#.# #..## #...#',
  O: '.##. #..# #..# #..# .##.',
  P: '###. #..# ###. #... #...',
  Q: '.##. #..# #..# #.#. .#.#',
  R: '###. #..# ###. #.#. #..#',
  S: '.### #... .##. ...# ###.',
  T: '##### ..#.. ..#.. ..#.. ..#..',
  U: '#..# #..# #..# #..# .##.',
  V: '#...# #...# .#.#. .#.#. ..#..',
  W: '#...# #...# #.#.# ##.## #...#',
  X: '#...# .#.#. ..#.. .#.#. #...#',
  Y: '#...# .#.#. ..#.. ..#.. ..#..',
  Z: '##### ...#. ..#.. .#... #####',
  '0': '.###. #..## #.#.# ##..# .###.',
  '1': '.#. ##. .#. .#. ###',
  '2': '###. ...# .##. #... ####',
  '3': '###. ...# .##. ...# ###.',
  '4': '#..# #..# #### ...# ...#',
  '5': '#### #... ###. ...# ###.',
  '6': '.##. #... ###. #..# .##.',
  '7': '#### ...# ..#. .#.. .#..',
  '8': '.##. #..# .##. #..# .##.',
  '9': '.##. #..# .### ...# .##.',
  ' ': '.. .. .. .. ..',
  '-': '... ... ### ... ...',
  '.': '. . . . #',
  ',': '.. .. .. .# #.',
  ':': '. # . # .',
  "'": '# # . . .',
  '’': '# # . . .',
  '?': '###. ...# .##. .... .#..',
  '!': '# # # . #',
  '/': '...# ..#. ..#. .#.. #...',
  '(': '.# #. #. #. .#',
  ')': '#. .# .# .# #.',
  '+': '... .#. ### .#. ...',
  '…': '..... ..... ..... ..... #.#.#',
  '■': '##### ##### ##### ##### #####',
  '□': '##### #...# #...# #...# #####',
} satisfies Record<string, string>;

/** Dots of one sign: five rows of true (ink) and false. */
export type Dots = readonly (readonly boolean[])[];

const shapes: ReadonlyMap<string, Dots> = new Map(
  Object.entries(drawn).map(([sign, rows]) => [
    sign,
    rows.split(' ').map((row) => [...row].map((dot) => dot === '#')),
  ]),
);

export const dotsHigh = 5;

/** Whether every sign of a text can be drawn large. */
export const canDraw = (text: string): boolean => [...text.toUpperCase()].every((sign) => shapes.has(sign));

/**
 * The dots of a text in capitals, at least one empty column between signs; signs without a shape are left out. With `even`
 * every sign begins in an even column, so that letters made of pairs of dots all look alike.
 */
export function dotsOf(text: string, even = false): Dots {
  const signs = [...text.toUpperCase()].flatMap((sign) => {
    const shape = shapes.get(sign);
    return shape ? [shape] : [];
  });
  return Array.from({ length: dotsHigh }, (_, y) =>
    signs.flatMap((shape, i) => {
      const row = shape[y] ?? [];
      if (i === signs.length - 1) return row;
      return [...row, ...(even && row.length % 2 === 0 ? [false, false] : [false])];
    }),
  );
}

/** Columns of dots a text takes. */
export function dotsWide(text: string, even = false): number {
  let columns = 0;
  let last = 0;
  for (const sign of text.toUpperCase()) {
    const own = shapes.get(sign)?.[0]?.length;
    if (own === undefined) continue;
    last = even && own % 2 === 0 ? 2 : 1;
    columns += own + last;
  }
  return columns - last;
}
