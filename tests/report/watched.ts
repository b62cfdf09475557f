import type { EnvelopeFacts, ProgramFacts } from '../../src/model/envelope-facts.ts';
import type { HomingFacts } from '../../src/model/homing-facts.ts';
import type { FrameFacts } from '../../src/model/motion-facts.ts';
import type { RepeatFacts } from '../../src/model/repeat-facts.ts';
import type { ScaleFacts } from '../../src/model/scale-facts.ts';
import type { SessionFacts } from '../../src/model/session-facts.ts';
import type { StoppingFacts } from '../../src/model/stopping-facts.ts';
import { mm, ms } from '../../src/model/units.ts';
import type { Verdict } from '../../src/model/verdict.ts';
import { apart, base, homingTrack, wrongWayTrack } from './tracks.ts';
import { weekend } from './weekend.ts';

/** What was watched of the workshop machine's axes, told by hand. */
export const frame: FrameFacts = {
  ways: [
    { commanded: 'X', axis: 'X', sign: 1, evidence: 'repeated' },
    { commanded: 'Y', axis: 'Y', sign: -1, evidence: 'told' },
    { commanded: 'Z', axis: 'Z', sign: 1, evidence: 'told' },
  ],
  says: 'mirrored',
  determinant: -1,
};

export const homing: HomingFacts = {
  ...base,
  axis: 'X',
  input: 'x-home',
  cycles: 3,
  seen: [
    'approach',
    'trip',
    'stop',
    'back-off',
    'clear',
    'slow approach',
    'slow trip',
    'release',
    'slow clear',
    'zero set',
  ],
  way: -1,
  approachSpeed: { value: 13.4, low: 13.3, high: 13.5 },
  slowSpeed: { value: 1.35, low: 1.3, high: 1.4 },
  approachWay: apart(93.8, 93.8),
  trip: apart(-0.7, -0.2),
  slowTrip: apart(-0.2, -0.1),
  stopDistance: apart(0.6, 1.1),
  backOff: apart(3, 3.1),
  release: apart(1.5, 1.5),
  differential: apart(0.3, 0.5),
  zero: 'jump',
  shift: apart(-1.2, -1.2),
  reaction: 'acted',
  order: ['Z', 'X', 'Y'],
};

const trips = [-0.151, -0.148, -0.153, -0.149, -0.151, -0.147, -0.152, -0.118, -0.15, -0.149];
export const repeat: RepeatFacts = {
  ...base,
  axis: 'X',
  source: 'commanded',
  n: 10,
  mean: -0.1468,
  s: 0.010_3,
  range: 0.035,
  unidirectional: mm(0.0412),
  definition: 'ISO 230-2 unidirectional: 4 s',
  unbiased: 0.010_6,
  mean95: { low: -0.154_2, high: -0.139_4 },
  lagOne: -0.71,
  deviation95: { low: 0.0071, high: 0.0188 },
  outlier: { index: 7, value: -0.118 },
  startPoints: 3,
  blur: mm(0.027),
  period: ms(16),
  tolerance: mm(0.1),
  says: 'within',
  runs: trips.map((trip, i) => ({
    place: apart(trip - 0.0135, trip + 0.0135),
    start: mm([20, 80, 160][i % 3] ?? 0),
  })),
};

export const stopping: StoppingFacts = {
  ...base,
  axis: 'X',
  speed: 13.4,
  acceleration: 250,
  reaction: 10,
  computed: mm(0.493),
  observed: apart(0.6, 1.1),
  stops: 3,
  worseThanDeclared: true,
  overtravel: mm(2.5),
  toHardStop: mm(4),
  room: { mm: mm(1.75), from: 'overtravel' },
  says: 'fits',
  fastest: 27.2,
  halved: mm(0.157),
};

export const envelopeX: EnvelopeFacts = {
  ...base,
  axis: 'X',
  ends: {
    negative: { stop: mm(-5), stopFrom: 'measured', trip: mm(-1.2), tripFrom: 'commanded', input: 'x-home' },
    positive: { trip: mm(424), tripFrom: 'configured', input: 'x-far' },
  },
  homes: 'negative',
  homeValue: mm(0),
  backOff: mm(3),
  soft: [mm(2), mm(425.5)],
  softMargin: mm(2.1),
  roomNeeded: mm(6.5),
  usable: mm(421),
  origins: [
    { system: 'G54', at: mm(60), active: true, shift: mm(0) },
    { system: 'G55', at: mm(64), active: false },
  ],
  parts: [{ system: 'G54', low: mm(58), high: mm(431), lowLine: 12, highLine: 208 }],
};

export const envelopeZ: EnvelopeFacts = {
  ...base,
  axis: 'Z',
  ends: {
    negative: {},
    positive: { stop: mm(2.5), stopFrom: 'told', trip: mm(1), tripFrom: 'commanded', input: 'z-top' },
  },
  homes: 'positive',
  homeValue: mm(0),
  backOff: mm(1),
  soft: [mm(-86), mm(-1)],
  softMargin: mm(1.6),
  roomNeeded: mm(1.2),
  origins: [{ system: 'G54', at: mm(-70), active: true }],
  parts: [],
};

export const program: ProgramFacts = {
  lines: 214,
  motions: 198,
  unitsAssumed: false,
  usesToolLength: true,
  shiftsTemporarily: false,
  notUnderstood: [{ line: 31, text: '#5 = [#2 * 3]', why: 'formula' }],
};

export const scale: ScaleFacts = {
  ...base,
  axis: 'Y',
  runs: [
    { commanded: mm(100), measured: mm(125.1), way: 1, afterReversal: false },
    { commanded: mm(100), measured: mm(124.8), way: -1, afterReversal: true },
    { commanded: mm(300), measured: mm(375.2), way: 1, afterReversal: true },
    { commanded: mm(300), measured: mm(375.3), way: -1, afterReversal: false },
  ],
  ratio: 1.251,
  doubt: 0.001,
  accepted: 0.001,
  offset: mm(0.05),
  backlash: mm(0.2),
  hasBacklash: true,
  byWay: { positive: 1.2505, negative: 1.2515 },
  waysDiffer: false,
  worst: mm(0.08),
  says: 'off',
  causes: [{ kind: 'lead', set: 4, real: 5 }],
  steps: 800,
  correctedSteps: 639.488,
};

const about = (check: Verdict['check'], subject: string, facts: Verdict['facts']): Verdict => ({
  check,
  subject,
  status: 'proved',
  evidence: 'commanded',
  findings: [],
  missing: [],
  traces: [],
  facts,
});

export const motionVerdicts: readonly Verdict[] = [
  about('seek', 'Z', { tracks: [wrongWayTrack] }),
  about('seek', 'machine', { frame }),
  about('homing', 'X', { tracks: [homingTrack], homing }),
  about('repeat', 'X', { repeat }),
  about('stopping', 'X', { stopping }),
  about('envelope', 'X', { envelope: envelopeX }),
  about('envelope', 'Z', { envelope: envelopeZ, program }),
  about('scale', 'Y', { scale }),
];

/** The workshop session, and then its axes were watched. */
export const watched: SessionFacts = { ...weekend, verdicts: [...weekend.verdicts, ...motionVerdicts] };
