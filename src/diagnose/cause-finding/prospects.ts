import { type Outcome, unforeseen } from '../../model/outcomes.ts';
import type { Wiring } from '../circuit/wiring.ts';
import { columnOf } from '../troubleshooting/again.ts';
import type { DeedName } from '../troubleshooting/deeds/all.ts';
import type { History } from '../troubleshooting/hypotheses.ts';
import type { Surroundings } from '../troubleshooting/imagined.ts';
import { alikeRows, type Prospect, prospectOf, type Trial } from '../troubleshooting/prospect.ts';

/** Computing one takes seconds; a session, its replay and its resume need the same few. */
const known = new Map<string, Prospect>();

export function prospectFor(wiring: Wiring, history: History, around: Surroundings): Prospect {
  const { circuit, contact, family, values } = wiring;
  // JSON has no infinity: a part left out is null there, and no given value is.
  const key = JSON.stringify([circuit.name, contact, family, values, history, around]);
  const before = known.get(key);
  if (before) return before;
  const prospect = prospectOf(wiring, history, around);
  known.set(key, prospect);
  return prospect;
}

/** What these ask of a person depends on the kind of contact. */
const dependOnContact: readonly DeedName[] = [
  'tug',
  'flex',
  'link-controller',
  'link-switch',
  'lamp',
  'ohms-contact-closed',
  'ohms-contact-open',
  'volts-terminal-closed',
  'volts-terminal-open',
  'volts-sensor-output',
  'amps-closed',
  'amps-open',
];

/** Several wirings thought of at once, each as likely: what may be the matter in any of them, by what is done the same in all. */
export function together(prospects: readonly [Prospect, ...Prospect[]]): Prospect {
  const [first, ...others] = prospects;
  if (others.length === 0) return first;
  const shares = prospects.map(({ hypotheses }) => hypotheses.reduce((sum, { weight }) => sum + weight, 0));
  return {
    wiring: first.wiring,
    hypotheses: prospects.flatMap(({ hypotheses }, at) =>
      hypotheses.map((each) => ({ ...each, weight: each.weight / (shares[at] ?? 1) })),
    ),
    trials: first.trials.flatMap((trial) => {
      const same = others.map(({ trials }) => trials.find(({ name }) => name === trial.name));
      const all = same.filter((each) => each !== undefined);
      if (dependOnContact.includes(trial.name) || all.length < others.length) return [];
      return [joinedTrial([trial, ...all])];
    }),
  };
}

function joinedTrial(trials: readonly [Trial, ...Trial[]]): Trial {
  const keys: readonly Outcome[] = [
    ...new Set(trials.flatMap((each) => each.keys.filter((key) => key !== unforeseen))),
    unforeseen,
  ];
  const chances = trials.flatMap((trial) => {
    const at = keys.map((key) => trial.keys.indexOf(key));
    return trial.chances.map((row) => {
      const rare = row[trial.keys.indexOf(unforeseen)] ?? 0;
      const padded = at.map((index) => (index < 0 ? rare : (row[index] ?? 0)));
      const sum = padded.reduce((total, each) => total + each, 0);
      return padded.map((each) => each / sum);
    });
  });
  const slips = keys.map((key) => {
    const each = trials.map((trial) => trial.slips[columnOf(trial, key)] ?? 0);
    return each.reduce((sum, slip) => sum + slip, 0) / each.length;
  });
  return { ...trials[0], slips, outcomes: keys.length, keys, chances, sameAs: alikeRows(chances) };
}
