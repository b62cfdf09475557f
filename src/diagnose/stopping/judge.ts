import { type Mm, mm } from '../../model/units.ts';
import type { Interval } from '../motion/interval.ts';
import { fastestThatStops, type Stopping, stoppingDistance } from './distance.ts';

/** What the stop of one axis is judged by. */
export interface StopQuestion {
  /** The approach, as observed or declared; undefined parts are not known. */
  readonly approach: { readonly [Part in keyof Stopping]?: number | undefined };
  /** Ways from trip to standstill seen in the stream, mm, each as well as the reports tell. */
  readonly observed: readonly Interval<Mm>[];
  /** How far the switch may be driven past its trip. */
  readonly overtravel: Mm | undefined;
  /** Way from the trip to solid metal. */
  readonly toHardStop: Mm | undefined;
  /** The dog keeps the switch operated, and unharmed, all the way to the hard stop: then only the hard stop bounds it. */
  readonly dogCovers?: boolean;
}

export interface StopJudgement {
  /** By formula, from speed, acceleration and reaction; undefined where one is not known. */
  readonly computed: Mm | undefined;
  /** The widest certain way seen. */
  readonly observed: Interval<Mm> | undefined;
  /** The stop seen cannot have been made with the numbers told: braking or reaction is worse than declared. */
  readonly worseThanDeclared: boolean;
  /** What the way is judged against, mm, and why so much. */
  readonly room: Room | undefined;
  readonly says: 'fits' | 'overruns' | 'unknown';
  /** Beyond the room, mm, where it overruns. */
  readonly over: Mm | undefined;
  /** The highest approach speed that stops within the room, mm/s, and its way; undefined where acceleration or reaction is not known. */
  readonly fastest: number | undefined;
  /** What half the present speed needs, mm. */
  readonly halved: Mm | undefined;
}

export interface Room {
  readonly mm: Mm;
  readonly from: 'overtravel' | 'hard stop';
}

/** The share of a switch's overtravel that a stop may use (common practice, no source). */
export const shareOfOvertravel = 0.7;
/** What must be left before solid metal, mm (common practice, no source). */
export const beforeMetal = 1;

/** Judges whether an axis comes to rest before its switch or the machine is harmed. Nothing observed and nothing declared says nothing. */
export function judgeStopping(question: StopQuestion): StopJudgement {
  const { speed, acceleration, reaction } = question.approach;
  const known = acceleration !== undefined && reaction !== undefined ? { acceleration, reaction } : undefined;
  const computed = known && speed !== undefined ? stoppingDistance({ ...known, speed }) : undefined;
  const observed = widest(question.observed);
  const room = roomOf(question);
  const surely = mm(Math.max(computed ?? 0, observed?.low ?? 0));
  const atMost = mm(Math.max(computed ?? 0, observed?.high ?? 0));
  const judged = room !== undefined && (computed !== undefined || observed !== undefined);
  const says = !judged ? 'unknown' : surely > room.mm ? 'overruns' : atMost <= room.mm ? 'fits' : 'unknown';
  return {
    computed,
    observed,
    worseThanDeclared: computed !== undefined && observed !== undefined && observed.low > computed,
    room,
    says,
    over: says === 'overruns' && room ? mm(surely - room.mm) : undefined,
    fastest: known && room ? fastestThatStops(room.mm, known.acceleration, known.reaction) : undefined,
    halved: known && speed !== undefined ? stoppingDistance({ ...known, speed: speed / 2 }) : undefined,
  };
}

/** The stop that certainly took longest. */
function widest(seen: readonly Interval<Mm>[]): Interval<Mm> | undefined {
  return seen.reduce<Interval<Mm> | undefined>(
    (most, each) => (each.low > (most?.low ?? -1) ? each : most),
    undefined,
  );
}

function roomOf({ overtravel, toHardStop, dogCovers }: StopQuestion): Room | undefined {
  const rooms: Room[] = [];
  if (overtravel !== undefined && !dogCovers)
    rooms.push({ mm: mm(overtravel * shareOfOvertravel), from: 'overtravel' });
  if (toHardStop !== undefined)
    rooms.push({ mm: mm(Math.max(0, toHardStop - beforeMetal)), from: 'hard stop' });
  return rooms.sort((a, b) => a.mm - b.mm)[0];
}
