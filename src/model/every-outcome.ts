import {
  type Beside,
  type Bin,
  besides,
  bounces,
  type Glimpse,
  type Held,
  jumps,
  type Linked,
  type Lit,
  type Neighbouring,
  type Outcome,
  type Own,
  outThenLinked,
  type Push,
  stays,
  still,
  to,
  unforeseen,
  type YesNo,
} from './outcomes.ts';

/** Every key of a record that has one for each: a key that is left out does not compile. */
const keysOf = <Key extends string>(each: Readonly<Record<Key, true>>) =>
  Object.keys(each) as readonly string[] as readonly Key[];

export const held = keysOf<Held>({
  'conducting 0': true,
  'conducting 1': true,
  'open 0': true,
  'open 1': true,
  conducting: true,
  open: true,
  0: true,
  1: true,
});
const glimpses: readonly Glimpse[] = [...held, jumps];

/** What a push was made of. */
export interface PushParts {
  readonly own: typeof still | typeof jumps | { readonly to: Held; readonly then: Then };
  readonly beside: Beside;
}
export type Then = 'returns' | 'stays' | 'bounces';

const ways: Readonly<Record<Then, (held: Held) => Own>> = { returns: to, stays, bounces };
const owns: readonly (readonly [Own, PushParts['own']])[] = [
  [still, still],
  [jumps, jumps],
  ...held.flatMap((each) =>
    (Object.keys(ways) as readonly Then[]).map((then): readonly [Own, PushParts['own']] => [
      ways[then](each),
      { to: each, then },
    ]),
  ),
];
const besideOnes = keysOf<Beside>({ 'no other': true, another: true, 'other end': true });

/** Every push with its parts, so that nobody takes one apart by how it is spelled. */
export const pushes: ReadonlyMap<Push, PushParts> = new Map(
  besideOnes.flatMap((beside) =>
    owns.map(([own, parts]): [Push, PushParts] => [besides(own, beside), { own: parts, beside }]),
  ),
);

/** Every level with a plug out and a link in its place. */
export const links: ReadonlyMap<Linked, { readonly out: Glimpse; readonly linked: Glimpse }> = new Map(
  glimpses.flatMap((out) => glimpses.map((linked) => [outThenLinked(out, linked), { out, linked }] as const)),
);

export const bins = keysOf<Bin>({
  'bin 0': true,
  'bin 1': true,
  'bin 2': true,
  'bin 3': true,
  'bin 4': true,
});

/** Every outcome that a search may come upon; what is none of them was written by another hand. */
export const everyOutcome = [
  ...new Set<string>([
    ...glimpses,
    ...pushes.keys(),
    ...links.keys(),
    ...bins,
    ...keysOf<YesNo>({ yes: true, no: true }),
    ...keysOf<Lit>({ on: true, off: true }),
    ...keysOf<Neighbouring>({
      own: true,
      'this one': true,
      both: true,
      third: true,
      none: true,
      jumps: true,
    }),
    unforeseen,
  ]),
] as readonly Outcome[];
