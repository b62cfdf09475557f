import { axisLetters, type Travel } from './travel.ts';
import type { Block } from './words.ts';

/**
 * A drilling cycle in the XY plane: over the hole, up to R where it stands lower, down to Z, back to R or to the old height; again for L holes in incremental
 * mode (NISTIR 6556, 3.5.16). Z and R stay from block to block.
 */
export function drill(travel: Travel, block: Block): void {
  const { modes } = travel;
  const { system } = modes;
  modes.drill = { z: travel.word(block, 'Z') ?? modes.drill.z, r: travel.word(block, 'R') ?? modes.drill.r };
  const { z, r } = modes.drill;
  const before = modes.places.Z;
  const old = before?.system === system ? before.value : undefined;
  const from = modes.absolute ? (modes.shift.Z ?? 0) : old;
  if (modes.plane !== 'XY') travel.cannotFollow(block, 'cycle-in-other-plane');
  else if (z === undefined || r === undefined) travel.cannotFollow(block, 'cycle-without-depth');
  else if (from === undefined) travel.cannotFollow(block, 'from-unknown-place');
  else {
    const retract = from + travel.length('Z', r);
    const depth = (modes.absolute ? from : retract) + travel.length('Z', z);
    overHoles(travel, block);
    const back = modes.retractToOld && old !== undefined ? Math.max(old, retract) : retract;
    for (const value of [retract, depth, back]) travel.arrive('Z', { system, value }, block.line);
  }
}

function overHoles(travel: Travel, block: Block): void {
  const { absolute, system } = travel.modes;
  const holes = absolute ? 1 : Math.max(1, Math.floor(travel.word(block, 'L') ?? 1));
  const last = Math.min(holes, mostHoles);
  for (let hole = 0; hole < last; hole++)
    travel.straight(
      block,
      system,
      axisLetters.filter((axis) => axis !== 'Z'),
    );
}

/** No sheet has more holes in one row; a mistyped count must not hold up the reader. */
const mostHoles = 10_000;
