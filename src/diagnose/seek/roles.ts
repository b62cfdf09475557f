import {
  type Axis,
  type AxisLetter,
  allSwitches,
  type Duty,
  type End,
  type InputName,
  inputOf,
  type Machine,
  oppositeSide,
  type Subject,
  type Switch,
} from '../../model/machine.ts';
import type { Mm } from '../../model/units.ts';
import type { Direction } from '../motion/runs.ts';

/** What each input means to the seek of one axis. */
export interface SeekRoles {
  readonly axis: Axis;
  /** Inputs that may trip it: the home switch, or one for each motor of a gantry. */
  readonly home: readonly InputName[];
  /** Limit inputs at its other end. */
  readonly farEnd: readonly InputName[];
  /** Home and limit inputs of other axes. */
  readonly otherAxes: readonly InputName[];
  /** Which axis works each of them. */
  readonly worksOther: Readonly<Record<InputName, AxisLetter | undefined>>;
  readonly probes: readonly InputName[];
  /** Stop buttons: a seek they end was not ended by its controller. */
  readonly stops: readonly InputName[];
  /** The commanded way to the end the home switch stands at. */
  readonly toward: Direction | undefined;
  /** Where that is known from: the end as told, the side seen from the stand, or only the homing setting. */
  readonly towardFrom: 'end' | 'side' | 'setting' | undefined;
  /** The home input has a switch at either end of this axis. */
  readonly sharesEnds: boolean;
  /** Other axes with a switch on the home input. */
  readonly sharesWith: readonly AxisLetter[];
  /** The person saw each home input answer to its own switch, and the switch is alone on it and of known side. */
  readonly placed: boolean;
  /** How far the home switch may be driven past its trip: the least where there are several. */
  readonly overtravel: Mm | undefined;
}

export const wayTo = (end: End): Direction => (end === 'positive' ? 1 : -1);

/** Roles as the machine file gives them; `answering` is what presses showed to be wired where. Undefined where the file has no such axis. */
export function seekRoles(
  machine: Machine,
  letter: string,
  answering: Readonly<Record<Subject, InputName>>,
): SeekRoles | undefined {
  const axis = machine.axes.find((each) => each.letter === letter);
  if (!axis) return undefined;
  const input = (each: Switch): InputName => answering[each.subject] ?? each.input;
  const limits = allSwitches(machine).filter(({ duty }) => duty.includes('home') || duty.includes('limit'));
  const ofDuty = (wanted: Duty) =>
    unique(
      allSwitches(machine)
        .filter(({ duty }) => duty.includes(wanted))
        .map(input),
    );
  const mine = limits.filter((each) => each.axis === axis.letter);
  const homes = homeSwitches(mine, axis);
  const home = unique(homes.map(input));
  const elsewhere = limits.filter((each) => !home.includes(input(each)));
  const end = endOf(homes, axis);
  const sharing = allSwitches(machine).filter((each) => home.includes(input(each)));
  return {
    axis,
    home,
    farEnd: unique(elsewhere.filter((each) => each.axis === axis.letter).map(input)),
    otherAxes: unique(elsewhere.filter((each) => each.axis !== axis.letter).map(input)),
    worksOther: Object.fromEntries(
      elsewhere.filter((each) => each.axis !== axis.letter).map((each) => [input(each), each.axis]),
    ),
    probes: ofDuty('probe'),
    stops: ofDuty('stop'),
    toward: end && wayTo(end.end),
    towardFrom: end?.from,
    sharesEnds: new Set(sharing.filter((each) => each.axis === axis.letter).map((each) => each.end)).size > 1,
    sharesWith: unique(
      sharing.flatMap((each) => (each.axis && each.axis !== axis.letter ? [each.axis] : [])),
    ),
    overtravel: homes.flatMap((each) => each.overtravel ?? []).sort((a, b) => a - b)[0],
    placed:
      homes.length > 0 &&
      homes.every(
        (each) =>
          answering[each.subject] !== undefined &&
          endFromSide(each, axis) !== undefined &&
          inputOf(machine, each.input)?.switches.length === 1,
      ),
  };
}

/** Switches of duty home; where none is named so, the limits at the end it homes to. */
function homeSwitches(mine: readonly Switch[], axis: Axis): readonly Switch[] {
  const named = mine.filter(({ duty }) => duty.includes('home'));
  return named.length > 0 ? named : mine.filter(({ end }) => end !== undefined && end === axis.homes);
}

function endOf(
  homes: readonly Switch[],
  axis: Axis,
): { end: End; from: 'end' | 'side' | 'setting' } | undefined {
  // Where a switch at either end is of duty home, the setting says which one is sought.
  const ends = unique(homes.flatMap(({ end }) => end ?? []));
  if (ends[0] !== undefined && ends.length === 1) return { end: ends[0], from: 'end' };
  const side = ends.length === 0 ? homes.map((each) => endFromSide(each, axis)).find(Boolean) : undefined;
  if (side) return { end: side, from: 'side' };
  return axis.homes && { end: axis.homes, from: 'setting' };
}

/** ISO 841 counts an axis positive where the tool goes over the work; where the table moves, nothing follows from the side. */
function endFromSide({ side }: Switch, { positive, moves }: Axis): End | undefined {
  if (side === undefined || positive === undefined || moves === 'table') return undefined;
  if (side === positive) return 'positive';
  return side === oppositeSide[positive] ? 'negative' : undefined;
}

const unique = <T>(items: readonly T[]): readonly T[] => [...new Set(items)];
