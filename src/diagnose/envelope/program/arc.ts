/** A point in a plane, mm. */
export type Point = readonly [number, number];

/** A circular arc in a plane whose first axis turns to its second counter-clockwise; mm. */
export interface Arc {
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly clockwise: boolean;
}

export interface PlaneBox {
  readonly low: Point;
  readonly high: Point;
}

/** How far the radii to the two ends may differ, mm (NISTIR 6556, 3.5.3.2: 0.002 mm). */
export const radiusTolerance = 0.002;
/** Rounding of positions printed with three or four decimals leaves this much between ends that are meant as one, mm. */
const sameEnd = 1e-6;

/** The smallest box around an arc: its ends, and its points furthest along each axis where it passes them. The same end twice is a full circle. */
export function boxOfArc({ from, to, centre, clockwise }: Arc): PlaneBox {
  const radius = Math.hypot(from[0] - centre[0], from[1] - centre[1]);
  const start = angle(from, centre);
  const whole = Math.hypot(to[0] - from[0], to[1] - from[1]) <= sameEnd;
  const sweep = whole ? 2 * Math.PI : turned(start, angle(to, centre), clockwise);
  const points = [
    from,
    to,
    ...quarters.flatMap((quarter) => {
      if (turned(start, quarter, clockwise) > sweep) return [];
      return [[centre[0] + radius * Math.cos(quarter), centre[1] + radius * Math.sin(quarter)] as const];
    }),
  ];
  const along = (axis: 0 | 1) => points.map((point) => point[axis]);
  return {
    low: [Math.min(...along(0)), Math.min(...along(1))],
    high: [Math.max(...along(0)), Math.max(...along(1))],
  };
}

const quarters = [0, Math.PI / 2, Math.PI, -Math.PI / 2];

const angle = (point: Point, centre: Point): number => Math.atan2(point[1] - centre[1], point[0] - centre[0]);

/** How far one turns from one angle to another, 0 up to a full turn. */
function turned(from: number, to: number, clockwise: boolean): number {
  const way = clockwise ? from - to : to - from;
  const whole = 2 * Math.PI;
  return ((way % whole) + whole) % whole;
}

/**
 * The centre of an arc given by its radius: the shorter arc where it is positive, the longer where it is negative (NISTIR 6556, 3.5.3.1). Undefined where the ends lie further apart than
 * the diameter, or are the same.
 */
export function centreOf(from: Point, to: Point, radius: number, clockwise: boolean): Point | undefined {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const chord = Math.hypot(dx, dy);
  const squared = radius ** 2 - (chord / 2) ** 2;
  if (chord <= sameEnd || squared < -radiusTolerance * Math.abs(radius)) return undefined;
  const height = Math.sqrt(Math.max(0, squared));
  // The centre of a short counter-clockwise arc lies left of its chord.
  const side = clockwise === radius > 0 ? -1 : 1;
  return [from[0] + dx / 2 - (side * height * dy) / chord, from[1] + dy / 2 + (side * height * dx) / chord];
}
