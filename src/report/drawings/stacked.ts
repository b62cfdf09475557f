/** Something to be written beside a place along a line. */
export interface Label {
  readonly x: number;
  readonly width: number;
}

/** Where it is written: its middle, and the row, counted from the line outward. */
export interface Stacked {
  readonly x: number;
  readonly row: number;
}

const gap = 4;

/** Labels in as few rows as they need so that none covers another and none runs over the edge; each in the first row that has room. */
export function stacked(
  labels: readonly Label[],
  { from, to }: { readonly from: number; readonly to: number },
): readonly Stacked[] {
  const rows: { left: number; right: number }[][] = [];
  return labels.map(({ x, width }) => {
    const half = width / 2;
    const inside = Math.max(from + half, Math.min(to - half, x));
    const own = { left: inside - half, right: inside + half };
    const fits = (row: readonly { left: number; right: number }[]) =>
      row.every(({ left, right }) => own.right + gap <= left || own.left >= right + gap);
    const found = rows.findIndex(fits);
    const row = found < 0 ? rows.length : found;
    rows[row] = [...(rows[row] ?? []), own];
    return { x: Math.round(inside * 100) / 100, row };
  });
}

/** How wide a text of the page's sans-serif runs at most, in units of the drawing: measured for digits and capitals, generous for the rest. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.58;
