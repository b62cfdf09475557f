import type { Answer } from '../../diagnose/learning/answers.ts';
import type { Choice } from '../../diagnose/learning/choices.ts';
import type { FoundInput } from '../../diagnose/learning/learn.ts';
import { baseOf, readingOf } from '../../diagnose/learning/reading-of.ts';
import type { InputName } from '../../model/machine.ts';
import { labelOfField, subjectFor } from './asked-about.ts';
import { type Learning, type LearnScene, oneOf, put } from './steps.ts';

export interface SettledInput {
  readonly name: InputName;
  readonly answer: Answer;
  readonly chance: number;
}
export interface SettledInputs {
  readonly bound: readonly SettledInput[];
  /** Input -> why it is not bound. */
  readonly open: ReadonlyMap<InputName, NotBound>;
}
export type NotBound = Exclude<FoundInput['kind'], 'found'> | 'tie' | 'not-pressed';

type Base = 2 | 10 | 16;

/** One place for each input: ties are asked about, the same question once for all inputs it concerns. */
export function* settleInputs({ machine, study }: LearnScene): Learning<SettledInputs> {
  const found = study.learned().inputs;
  const open = new Map<InputName, NotBound>();
  const chosen = new Map<InputName, Choice>();
  const preferred = new Map<string, string | undefined>();
  const asked = new Set<InputName>();
  for (const [name, each] of found) {
    if (asked.has(name)) continue;
    if (each.kind === 'found' || (each.kind === 'together' && each.choices.length > 0)) {
      const names = each.kind === 'found' ? [name] : [name, ...each.inputs];
      for (const one of names) asked.add(one);
      const share = each.kind === 'found' || (yield* shareOneInput(names));
      const choice = share ? yield* choose(name, each.choices) : undefined;
      for (const one of names) {
        if (choice) chosen.set(one, choice);
        else open.set(one, each.kind === 'found' ? 'tie' : 'together');
      }
    } else open.set(name, each.kind);
  }
  for (const { name } of machine.inputs) if (!found.has(name)) open.set(name, 'not-pressed');
  const bases = yield* basesOf([...chosen.values()]);
  const bound = machine.inputs.flatMap(({ name }) => {
    const choice = chosen.get(name);
    if (!choice) return [];
    const base = bases.get(fieldOf(choice));
    if (base === 'unknown') {
      open.set(name, 'tie');
      return [];
    }
    return [{ name, answer: readingOf(choice, base), chance: choice.chance }];
  });
  return { bound, open };

  function* choose(name: InputName, choices: readonly Choice[]): Learning<Choice | undefined> {
    const [only, second] = choices;
    if (!second) return only;
    const labels = choices.map(labelOf);
    const key = [...labels].sort().join('\n');
    if (preferred.has(key)) return choices.find((_, i) => labels[i] === preferred.get(key));
    const subject = subjectFor(machine, name);
    const choice = yield* oneOf(choices, (_, left) => ({
      action: 'confirm',
      topic: 'which-value',
      subject,
      shows: left.map(labelOf),
    }));
    preferred.set(key, choice && labelOf(choice));
    return choice;
  }

  function* shareOneInput(names: readonly InputName[]): Learning<boolean> {
    const { answer } = yield* put({ action: 'confirm', topic: 'together', shows: names });
    return answer === 'yes';
  }
}

/** Which base the numbers of each field are written in; where nothing heard decides it, the person is asked. */
function* basesOf(choices: readonly Choice[]): Learning<ReadonlyMap<string, Base | 'unknown' | undefined>> {
  const fields = new Map<string, Choice[]>();
  for (const choice of choices) {
    if (!choice.answers.some(({ part }) => part.kind === 'bit')) continue;
    fields.set(fieldOf(choice), [...(fields.get(fieldOf(choice)) ?? []), choice]);
  }
  const bases = new Map<string, Base | 'unknown' | undefined>();
  for (const [field, of] of fields) {
    // What is no number at best needs no base.
    const isNumber = of.some(
      (choice) => readingOf(choice, 16).part.kind === 'bit' || readingOf(choice, 10).part.kind === 'bit',
    );
    const reading = isNumber ? baseOf(of) : undefined;
    if (reading && 'bases' in reading) {
      const base = yield* oneOf(reading.bases, (each) => ({
        action: 'confirm',
        topic: 'which-base',
        shows: [field, String(each)],
      }));
      bases.set(field, base ?? 'unknown');
    } else bases.set(field, reading?.base);
  }
  return bases;
}

/** The field a choice's number stands in: under one name in whichever lines it was found. */
const fieldOf = ({ answers }: Choice): string =>
  answers.find(({ part, series }) => part.kind === 'bit' && !/^(?:word|number)-/.test(series.field))?.series
    .field ?? answers[0].series.field;

const labelOf = (choice: Choice): string => {
  const { series } = readingOf(choice, undefined);
  return labelOfField(series.field, series.lines);
};
