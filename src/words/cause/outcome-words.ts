import type { DeedName, LookDeed } from '../../model/deed-names.ts';
import { links, pushes, type Then } from '../../model/every-outcome.ts';
import type {
  Beside,
  Glimpse,
  Lit,
  Neighbouring,
  Outcome,
  OutcomeOf,
  Own,
  YesNo,
} from '../../model/outcomes.ts';
import { meterOutcomes } from './meter-outcome-words.ts';

const glimpses: Readonly<Record<Glimpse, string>> = {
  'conducting 0': 'inactive, line conducting',
  'conducting 1': 'active, line conducting',
  'open 0': 'inactive, line open',
  'open 1': 'active, line open',
  conducting: 'line conducting',
  open: 'line open',
  0: 'inactive',
  1: 'active',
  jumps: 'jumping to and fro',
};

const owns: Readonly<Record<Exclude<Own, `to ${string}`>, string>> = {
  still: 'no answer',
  jumps: 'it jumped to and fro',
};
const after: Readonly<Record<Then, string>> = {
  returns: '',
  stays: ', and stayed so',
  bounces: ', with bounce',
};
const besides: Readonly<Record<Beside, string>> = {
  'no other': '',
  another: '; another input answered',
  'other end': '; the input of the other end of the axis answered',
};

const neighbours: Readonly<Record<Neighbouring, string>> = {
  own: 'its own input answered',
  'this one': 'this input answered in its place',
  both: 'its own input and this one answered',
  third: 'a third input answered',
  none: 'nothing answered',
  jumps: 'this input jumped to and fro',
};

/** What a yes and a no of a look say, without the question. */
const looks: Readonly<Record<LookDeed, Readonly<Record<YesNo, string>>>> = {
  lever: { yes: 'yes, it is in', no: 'no, it is out' },
  face: { yes: 'yes, there is something on it', no: 'no, it is clean' },
  settings: { yes: 'yes, one of them is wrong', no: 'no, none of them is wrong' },
  blades: { yes: 'yes, on the two outer ones, the common one empty', no: 'no, the common one is used' },
  gap: { yes: 'yes, too large, or the target too small', no: 'no, near enough and large enough' },
  bracket: { yes: 'yes, something gives', no: 'no, all sits tight' },
  clip: { yes: 'yes, off, on paint, or on what does not conduct', no: 'no, it sits on bare metal' },
};
const lit: Readonly<Record<Lit, string>> = { on: 'lit', off: 'not lit' };

const pushed = pairs(pushes, ({ own, beside }) => {
  const seen = typeof own === 'string' ? owns[own] : `answered: ${glimpses[own.to]}${after[own.then]}`;
  return `${seen}${besides[beside]}`;
});
const linked = pairs(links, ({ out, linked }) => `out: ${glimpses[out]}; joined: ${glimpses[linked]}`);

/** Words for each of these, by what it is made of. */
function pairs<Key extends string, Parts>(of: ReadonlyMap<Key, Parts>, say: (parts: Parts) => string) {
  const said = [...of].map(([key, parts]) => [key, say(parts)] as const);
  return Object.fromEntries(said) as Readonly<Record<Key, string>>;
}

/** For every deed words for each of its outcomes: one without words does not compile. */
const words: { readonly [Name in DeedName]: Readonly<Record<OutcomeOf<Name>, string>> } = {
  rest: glimpses,
  press: pushed,
  tap: pushed,
  carriage: pushed,
  neighbour: neighbours,
  tug: glimpses,
  flex: glimpses,
  'unplug-controller': glimpses,
  'unplug-switch': glimpses,
  'link-controller': linked,
  'link-switch': linked,
  lamp: lit,
  ...looks,
  ...meterOutcomes,
  drives: glimpses,
  spindle: glimpses,
  axis: glimpses,
};

/** What a deed came to, as the end of a sentence; `supply` and figures are not needed for it. */
export function outcomeText(deed: DeedName, outcome: Outcome): string {
  const own: { readonly [Each in Outcome]?: string } = words[deed];
  return own[outcome] ?? 'something else than any of the causes thought of would show';
}
