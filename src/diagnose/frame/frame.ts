/** Where the tool really goes for a positive command: an axis of ISO 841's right-handed frame, and which way along it. */
export interface TrueWay {
  readonly axis: LinearAxis;
  readonly sign: 1 | -1;
}
export type LinearAxis = 'X' | 'Y' | 'Z';
/** Commanded axis -> true way; axes not known yet are left out. */
export type FrameMap = Readonly<Partial<Record<LinearAxis, TrueWay>>>;

export type Matrix = readonly (readonly number[])[];

export interface Frame {
  /** The axes judged, in the order of the matrix. */
  readonly axes: readonly LinearAxis[];
  /** Columns are commanded axes, rows true ones; a signed permutation. */
  readonly matrix: Matrix;
  readonly determinant: 1 | -1;
  /** `true`: as ISO 841 has it. `turned`: the part is right, and lies turned. `mirrored`: the part comes out as in a mirror. */
  readonly kind: 'true' | 'turned' | 'mirrored';
  readonly inverted: readonly LinearAxis[];
  readonly exchanged: readonly LinearAxis[];
}

export type FrameProblem =
  | { readonly kind: 'too-few-axes' }
  /** Two commanded axes move the same true one: an answer or a motor plug is wrong. */
  | { readonly kind: 'same-axis-twice'; readonly axis: LinearAxis }
  /** An axis goes along one that is not among those judged. */
  | { readonly kind: 'leaves-the-plane'; readonly axis: LinearAxis };

const order = ['X', 'Y', 'Z'] as const;

/**
 * The frame that the true ways of two or three axes span. Determinant +1 is a right-handed frame (ISO 841: X × Y = Z), perhaps turned; −1 mirrors the part, swaps
 * the two senses of an arc, and turns climb milling into conventional.
 */
export function frameOf(map: FrameMap): Frame | FrameProblem {
  const axes = order.filter((letter) => map[letter] !== undefined);
  if (axes.length < 2) return { kind: 'too-few-axes' };
  const ways = axes.flatMap((letter) => map[letter] ?? []);
  const twice = ways.find((way, i) => ways.findIndex(({ axis }) => axis === way.axis) !== i);
  if (twice) return { kind: 'same-axis-twice', axis: twice.axis };
  const outside = ways.find(({ axis }) => !axes.includes(axis));
  if (outside) return { kind: 'leaves-the-plane', axis: outside.axis };
  const matrix = axes.map((row) => ways.map(({ axis, sign }) => (axis === row ? sign : 0)));
  const det = determinant(matrix);
  const exchanged = axes.filter((letter) => map[letter]?.axis !== letter);
  const inverted = axes.filter((letter) => map[letter]?.sign === -1);
  const asIs = exchanged.length === 0 && inverted.length === 0;
  return {
    axes,
    matrix,
    determinant: det > 0 ? 1 : -1,
    kind: det < 0 ? 'mirrored' : asIs ? 'true' : 'turned',
    inverted,
    exchanged,
  };
}

/** By expansion along the first row (Laplace). */
export function determinant(matrix: Matrix): number {
  const [first, ...below] = matrix;
  if (!first) return 1;
  return first.reduce((sum, value, i) => {
    if (value === 0) return sum;
    const minor = below.map((row) => row.filter((_, k) => k !== i));
    return sum + (i % 2 === 0 ? 1 : -1) * value * determinant(minor);
  }, 0);
}
