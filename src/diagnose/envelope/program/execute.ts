import { drill } from './cycle.ts';
import { takeMode } from './modes.ts';
import { moveArc } from './move-arc.ts';
import type { Travel } from './travel.ts';
import type { Block } from './words.ts';

/** What a program was seen to use, beside where it goes. */
export interface Uses {
  units: boolean;
  toolLength: boolean;
  temporaryShift: boolean;
}

/** Carries out one block, for its extents only. Returns whether the program ends with it (M2, M30). */
export function execute(block: Block, travel: Travel, uses: Uses): boolean {
  const has = (letter: string, values: readonly number[]) =>
    block.words.some((each) => each.letter === letter && values.includes(each.value));
  takeCodes(block, travel, uses);
  if (has('M', [97, 98])) {
    travel.cannotFollow(block, 'subprogram');
    travel.lose(undefined);
  }
  if (has('G', [92])) shiftTo(block, travel);
  else if (has('G', [28, 30])) toStoredPoint(block, travel);
  else if (!has('G', [10])) move(block, travel, has('G', [53]));
  return has('M', [2, 30]);
}

/** The G codes of a block, without any motion: all that can be had of a block that was only read in part. */
export function takeCodes(block: Block, travel: Travel, uses: Uses): void {
  for (const { letter, value } of block.words) if (letter === 'G') takeCode(value, block, travel, uses);
}

/** Codes of one block alone, dealt with after the modes. */
const once = new Set([28, 30, 53, 92]);

function takeCode(code: number, block: Block, travel: Travel, uses: Uses): void {
  const { modes } = travel;
  if (code === 20 || code === 21) uses.units = true;
  if (code === 43 || code === 43.1) uses.toolLength = true;
  else if (code === 41 || code === 42) travel.cannotFollow(block, 'cutter-compensation');
  else if (code === 10) travel.cannotFollow(block, 'changes-offset');
  else if (code === 92.1 || code === 92.2) modes.shift = {};
  else if (!once.has(code) && !takeMode(modes, code)) travel.cannotFollow(block, 'unknown-code');
  if (code === 92) uses.temporaryShift = true;
  if (code === 38.2) travel.cannotFollow(block, 'probe');
}

function move(block: Block, travel: Travel, inMachine: boolean): void {
  const { motion, system } = travel.modes;
  const axes = travel.axesOf(block);
  const isArc = motion === 'arc-clockwise' || motion === 'arc-counter-clockwise';
  // A full circle may name its centre alone.
  const namesCentre = isArc && ['I', 'J', 'K'].some((letter) => travel.word(block, letter) !== undefined);
  if (axes.length === 0 && !namesCentre) return;
  if (motion === 'none') {
    travel.cannotFollow(block, 'unknown-code');
    return;
  }
  travel.motions++;
  if (inMachine) travel.straight(block, 'machine');
  else if (motion === 'drill') drill(travel, block);
  else if (isArc) moveArc(travel, block);
  else travel.straight(block, system);
  if (motion === 'probe') travel.lose(axes);
}

/** Through the point named, then to a point stored in the controller (NISTIR 6556, 3.5.8). */
function toStoredPoint(block: Block, travel: Travel): void {
  const axes = travel.axesOf(block);
  travel.motions++;
  travel.straight(block, travel.modes.system);
  travel.lose(axes.length > 0 ? axes : undefined);
  travel.cannotFollow(block, 'stored-point');
}

/** G92: the axis is to read this number where it now stands (NISTIR 6556, 3.5.18). */
function shiftTo(block: Block, travel: Travel): void {
  const { places, shift, system } = travel.modes;
  let unknown = false;
  for (const axis of travel.axesOf(block)) {
    const here = places[axis];
    if (here?.system === system)
      shift[axis] = here.value - travel.length(axis, travel.word(block, axis) ?? 0);
    else unknown = true;
  }
  if (unknown) travel.cannotFollow(block, 'from-unknown-place');
}
