import { z } from 'zod';
import {
  type Finding,
  type FindingKind,
  type MotionFact,
  type MotionKind,
  motionKinds,
} from '../../model/finding.ts';
import {
  type LimitChange,
  type LimitFact,
  type LimitKind,
  limitIssues,
  limitKinds,
  limitSettings,
} from '../../model/limits-finding.ts';
import type { AxisLetter } from '../../model/machine.ts';
import { separatorNames, situationNames } from '../../model/seek-situations.ts';
import type { Mm } from '../../model/units.ts';
import { scaleCauseSchema } from './figures.ts';

type Of<Kind extends FindingKind> = Extract<Finding, { readonly kind: Kind }>;
type ShapeOf<Kind extends FindingKind> = {
  [Fact in Exclude<keyof Of<Kind>, 'kind'>]: z.ZodType<Of<Kind>[Fact]>;
};

const name = z.string();
const names = z.array(name).readonly();
const count = z.int().nonnegative();
const contact = z.enum(['normally closed', 'normally open', 'unknown']);
const plugs = z.array(z.strictObject({ subject: name, at: z.enum(['switch', 'controller']) })).readonly();

const motionFact = {
  axis: z.string() as unknown as z.ZodType<AxisLetter>,
  candidates: z.array(z.enum(situationNames)).readonly(),
  apart: z.array(z.enum(separatorNames)).readonly(),
  input: name.exactOptional(),
  by: (z.number() as unknown as z.ZodType<Mm>).exactOptional(),
} satisfies { [Fact in keyof MotionFact]: z.ZodType<MotionFact[Fact]> };
const motionFacts = Object.fromEntries(motionKinds.map((kind) => [kind, motionFact])) as Record<
  MotionKind,
  typeof motionFact
>;

const limitFact = {
  axis: motionFact.axis,
  issue: z.enum(limitIssues),
  end: z.enum(['negative', 'positive']).exactOptional(),
  by: z.number() as unknown as z.ZodType<Mm>,
  change: z
    .strictObject({ what: z.enum(limitSettings), from: z.number().optional(), to: z.number() })
    .exactOptional() as unknown as z.ZodType<LimitChange | undefined>,
  line: z.int().exactOptional(),
  system: name.exactOptional(),
} satisfies { [Fact in keyof LimitFact]-?: z.ZodType };
const limitFacts = Object.fromEntries(limitKinds.map((kind) => [kind, limitFact])) as Record<
  LimitKind,
  typeof limitFact
>;

/** The facts of each kind. A kind without a line here does not compile, nor does a line with a fact too many or too few. */
const facts = {
  ...motionFacts,
  ...limitFacts,
  'scale-off': {
    axis: motionFact.axis,
    ratio: z.number(),
    cause: scaleCauseSchema.exactOptional(),
    steps: z.number().exactOptional(),
    corrected: z.number().exactOptional(),
  },
  backlash: { axis: motionFact.axis, by: z.number() as unknown as z.ZodType<Mm> },
  'ways-differ': { axis: motionFact.axis, positive: z.number(), negative: z.number() },
  'stop-told': {},
  'break-undetected': { input: name, breaks: names },
  'polarity-reversed': { input: name },
  'polarity-shared': { input: name, breaks: names },
  'polarity-unknown': { input: name },
  'never-changes': { input: name },
  'stuck-active': { input: name },
  'already-open': { input: name },
  flickers: { input: name, edges: count.exactOptional() },
  'answers-elsewhere': { input: name, answeredBy: name },
  'shifted-plug': { connector: name, by: z.int() },
  'moves-together': { input: name, with: names },
  'chain-blocked': { input: name, others: names },
  chatters: { input: name, edges: count },
  'misses-presses': { input: name, answered: count, asked: count },
  'another-answered': { input: name, answeredBy: names, elsewhere: count, answered: count, asked: count },
  sticks: { input: name },
  'slow-answer': { input: name },
  'floats-open': { input: name, edges: count },
  'declared-otherwise': { declared: contact, found: contact },
  'not-enabled': { input: name },
  'wrong-plug': { input: name },
  'still-out': { what: plugs },
  'power-stays-on': {},
  'status-not-following': { input: name },
  'does-not-latch': {},
  restarts: {},
  'false-trips': {
    input: name,
    trips: count,
    low: z.number().exactOptional(),
    high: z.number().exactOptional(),
  },
  'controller-restarted': { times: count },
  'conflicting-answers': { inputs: names },
  'input-not-in-stream': { input: name },
  'side-clash': { axis: name, side: name, end: name, positive: name },
  'stream-gaps': { gaps: count, lost: count, unreadable: count },
} satisfies { [Kind in FindingKind]: ShapeOf<Kind> };

const members = Object.entries(facts).map(([kind, shape]) =>
  z.strictObject({ kind: z.literal(kind), ...shape }),
);

/** A finding as the record holds it. */
export const findingSchema = z.discriminatedUnion(
  'kind',
  members as unknown as [(typeof members)[number], ...typeof members],
) as unknown as z.ZodType<Finding>;
