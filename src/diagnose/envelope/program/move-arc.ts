import { boxOfArc, centreOf, type Point, radiusTolerance } from './arc.ts';
import { planes } from './modes.ts';
import { axisLetters, type Travel } from './travel.ts';
import type { Block } from './words.ts';

/** An arc in the active plane, by centre or radius, with every other axis going along straight (a helix). */
export function moveArc(travel: Travel, block: Block): void {
  const { modes, boxes } = travel;
  const { system } = modes;
  const { first, second } = planes[modes.plane];
  const from = placeIn(travel, first, second);
  const [u, v] = [travel.target(block, first, system), travel.target(block, second, system)];
  travel.straight(
    block,
    system,
    axisLetters.filter((axis) => axis !== first && axis !== second),
  );
  if (!from || u === 'unknown' || v === 'unknown') {
    // Its end is known where it is told absolutely; how far it swings out is not.
    travel.straight(block, system, [first, second]);
    if (!from) travel.cannotFollow(block, 'from-unknown-place');
    return;
  }
  const to: Point = [u ?? from[0], v ?? from[1]];
  const clockwise = modes.motion === 'arc-clockwise';
  const centre = centreFrom(travel, block, from, to, clockwise);
  travel.arrive(first, { system, value: to[0] }, block.line);
  travel.arrive(second, { system, value: to[1] }, block.line);
  if (!centre) {
    travel.cannotFollow(block, 'arc-without-centre');
    return;
  }
  const radius = ([x, y]: Point) => Math.hypot(x - centre[0], y - centre[1]);
  if (Math.abs(radius(from) - radius(to)) > radiusTolerance * Math.max(1, modes.unit / 10))
    travel.cannotFollow(block, 'arc-radii-differ');
  const box = boxOfArc({ from, to, centre, clockwise });
  boxes.add(system, first, box.low[0], box.high[0], block.line);
  boxes.add(system, second, box.low[1], box.high[1], block.line);
}

function placeIn({ modes }: Travel, first: 'X' | 'Y' | 'Z', second: 'X' | 'Y' | 'Z'): Point | undefined {
  const [a, b] = [modes.places[first], modes.places[second]];
  return a?.system === modes.system && b?.system === modes.system ? [a.value, b.value] : undefined;
}

function centreFrom(
  travel: Travel,
  block: Block,
  from: Point,
  to: Point,
  clockwise: boolean,
): Point | undefined {
  const { unit, plane, absoluteCentres, shift } = travel.modes;
  const radius = travel.word(block, 'R');
  if (radius !== undefined) return centreOf(from, to, radius * unit, clockwise);
  const { first, second, centre } = planes[plane];
  const [i, j] = centre.map((letter) => travel.word(block, letter));
  if (i === undefined && j === undefined) return undefined;
  if (!absoluteCentres) return [from[0] + (i ?? 0) * unit, from[1] + (j ?? 0) * unit];
  if (i === undefined || j === undefined) return undefined;
  return [i * unit + (shift[first] ?? 0), j * unit + (shift[second] ?? 0)];
}
