import { beamCases } from './beam-cases.ts';
import { directionCases } from './direction-cases.ts';
import type { Play, SeekCase } from './seek-case.ts';
import { switchCases } from './switch-cases.ts';
import { wayCases } from './way-cases.ts';

export const cases: readonly SeekCase[] = [...directionCases, ...switchCases, ...wayCases, ...beamCases];

export const played: readonly { readonly name: string; readonly because: string; readonly play: Play }[] =
  cases.flatMap(({ name, plays }) => plays.map((play) => ({ name, because: play.because, play })));

/** Cases that stay open, or that are told in the very words of another, with what would tell them apart. */
export const notApart: Readonly<Record<string, { readonly why: string; readonly apart: string }>> = {
  'its direction is set the wrong way, its switch where it should be': {
    why: 'setting and winding turn the same motor round',
    apart: 'nothing from outside, and nothing needs to: either of the two is put right, not both',
  },
  'one winding of its motor is connected the other way round': {
    why: 'setting and winding turn the same motor round',
    apart: 'nothing from outside, and nothing needs to',
  },
  'both ends share one input, and its direction is wrong': {
    why: 'a switch that shares its input marks no place: the wrong corner answers like the right one',
    apart: 'separate inputs, or the corner looked at by eye',
  },
  'Z is set to seek down to the work': {
    why: 'stopped in its first millimetres it has not shown whether a probe waits there',
    apart: 'whether a probe answers when it is let go on, which nobody is asked to wait for',
  },
  'Z touches the work with a probe instead of seeking its top': {
    why: 'stopped in its first millimetres it has not shown whether a probe waits there',
    apart: 'whether a probe answers when it is let go on, which nobody is asked to wait for',
  },
  'another axis stands on a switch that shares its input': {
    why: 'a shared input does not say which switch operates it',
    apart: 'looking at the other axis, or moving it off',
  },
  'steps are lost, or what works the switch slips': {
    why: 'in the count a motor that loses steps and a switch that wanders are the same',
    apart: 'a dial gauge in the check of repeatability: it names the one or the other',
  },
  'Z drops as it sets off': {
    why: 'what drops is not counted, like a lost step',
    apart: 'a dial gauge against Z as it sets off',
  },
  'the two motors of a beam work against each other': {
    why: 'a beam that is pulled askew and one that stands askew are both out of square',
    apart: 'a homing that squares it, which nobody is sent on with a beam out of square: each side by hand',
  },
  'the switch of one side of a beam is dead': {
    why: 'with one side waiting and the other going on, exchanged switches look the same',
    apart: 'a press of each side’s switch by hand',
  },
  'both sides of a beam are joined on one wire': {
    why: 'the sides of a square beam trip in one report too',
    apart: 'a press of each side’s switch by hand: joined, neither answers alone',
  },
  'a sound axis': {
    why: 'a beam whose switches were joined after the presses homes like a sound one',
    apart: 'a press of each side’s switch by hand',
  },
  'one side of a beam stands ahead of the other, or loses steps against it': {
    why: 'all that pulls a beam askew shows in the same two trips',
    apart: 'each side moved by hand, then homing after homing',
  },
  'a turning axis comes to its mark from either side': {
    why: 'stopped in its first degrees it has shown only that it set off the other way',
    apart: 'where it trips when it is let go on from either side',
  },
};

/** What of a case no bench of ours plays, and why. */
export const notPlayed: Readonly<Record<string, string>> = {
  'one winding of its motor is open':
    'Wires of two windings mixed: a motor that shakes into either direction has no lawful motion to simulate; to the person it buzzes like an open winding.',
  'its trip is lost to bounce or to a filter':
    'A controller that takes a bounce for its second trip and turns early: the bench’s controller waits out its filter.',
  'nothing is reported while it homes':
    'Positions that stand still in the reports while the axis moves: the bench reports what it counts. Made-up readings play it in the tests of the seek.',
};
