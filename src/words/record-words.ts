import type { Status } from '../model/verdict.ts';

/** What the first page says of the whole record. The worst line governs it; none of these is a permission. */
export const headlineWords = {
  failed:
    'At least one line of this record failed. Rely on none of these inputs before the changes below are made and tested again.',
  inconclusive: 'At least one check lacks its evidence. What is missing stands under Not tested.',
  'not-tested': 'At least one check that was asked for was not made. See Not tested.',
  limited:
    'Each check that was asked for was made. At least one input works only within a limitation named below.',
  proved: 'Each check that was asked for has its evidence. What was not asked for stands under Not tested.',
} satisfies Record<Status, string>;

export const blankWords = {
  notTested: 'NOT TESTED',
  notStated: 'not stated',
  none: 'None.',
} as const;

/** Headings and opening sentences of the record, in their order. */
export const sectionWords = {
  summary: { heading: 'Result', opening: '' },
  identity: { heading: 'Machine and record', opening: '' },
  people: {
    heading: 'People, time, conditions',
    opening: 'To be filled in by hand; the tool knows only the start.',
  },
  method: { heading: 'Scope and method', opening: '' },
  sketch: { heading: 'Coordinate sketch', opening: '' },
  map: {
    heading: 'Input map',
    opening:
      'One row for each switch. What the machine file declares and what was found stand apart and are never mixed.',
  },
  verdicts: {
    heading: 'Switch by switch, axis by axis',
    opening:
      'Each drawing shows exactly the readings its result rests on. Solid line: the active value. Dashed line: the electrical level. Dots: reports. Grey band: between the last report of the old value and the first of the new, so the change lies somewhere inside it.',
  },
  circuits: {
    heading: 'Circuits',
    opening:
      'Computed from the circuits that the machine file names, not measured on the machine. The polarity setting is taken to be right: a sound switch that is pressed reads active. Each dot carries its voltage against 0 V of the controller.',
  },
  findings: { heading: 'What the findings mean', opening: '' },
  motion: { heading: 'Motion, axis by axis', opening: '' },
  homing: { heading: 'Homing', opening: '' },
  repeat: { heading: 'Repeatability', opening: '' },
  stopping: { heading: 'Stopping distance', opening: '' },
  envelope: { heading: 'Envelope', opening: '' },
  scale: { heading: 'Scale and backlash', opening: '' },
  functions: {
    heading: 'Stop, door, probe',
    opening:
      'Status and function are two things. Status: the controller sees the button. Function: power goes, the door holds motion off, the probe ends a move.',
  },
  untested: {
    heading: 'NOT TESTED',
    opening: 'Nothing in this record covers what stands here. This page belongs to every copy.',
  },
  cautions: { heading: 'Cautions', opening: 'For whoever works on this machine with this record in hand.' },
  limitations: { heading: 'Limitations', opening: 'How far the results reach.' },
  cause: { heading: 'Cause', opening: '' },
  changes: {
    heading: 'Changes to make',
    opening: 'The tool changes nothing. Write down who made a change, and test again what stands beside it.',
  },
  open: {
    heading: 'Open items',
    opening: 'Plugs pulled for a test and not seen to go back. This list must be empty.',
  },
  retest: { heading: 'Test again', opening: '' },
  acceptance: { heading: 'Acceptance', opening: '' },
  annex: {
    heading: 'Annex: raw record',
    opening: 'Times are seconds on the session’s own clock, from its start.',
  },
} as const satisfies Record<string, { readonly heading: string; readonly opening: string }>;

export type SectionId = keyof typeof sectionWords;
