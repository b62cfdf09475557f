import type {
  ActivityBinding,
  InputBinding,
  LinesMeant,
  Part,
  StreamDescription,
} from '../../../model/stream-description.ts';
import { absent, present } from '../../../model/stream-description.ts';

/** A line of comment for each thing bound, by its name: `activity`, an input, `axis X`. */
export interface Remarks {
  readonly head: readonly string[];
  readonly of: Readonly<Record<string, string>>;
  readonly tail: readonly string[];
}

/** The description as the file that `readDescription` reads back to the same, with remarks as comments. */
export function writeDescription(description: StreamDescription, remarks: Remarks): string {
  const { stream, agree, request, inputs, axes, activity } = description;
  const remark = (name: string): readonly string[] => {
    const said = remarks.of[name];
    return said === undefined ? [] : [`  # ${said}`];
  };
  const lines = [
    ...remarks.head.map(comment),
    `stream: ${quoted(stream)}`,
    `agree: ${agree}   # reports that must agree before a change counts: 1, or 2 where lines arrive damaged`,
    ...(request ? [`request: { send: ${quoted(request.send)}, every: ${request.every} }   # ms`] : []),
    inputs.length > 0 ? 'inputs:' : 'inputs: {}',
    ...inputs.flatMap(({ name, at }) => [...remark(name), `  ${name}: ${flow(inputEntries(at))}`]),
    axes.length > 0 ? 'axes:' : 'axes: {}',
    ...axes.flatMap(({ letter, at }) => [
      ...remark(`axis ${letter}`),
      `  ${letter}: ${flow([['field', quoted(at.field)], ['scale', decimal(at.scale)], ...linesEntry(at.lines)])}`,
    ]),
    ...(activity ? [...remark('activity'), `activity: ${flow(activityEntries(activity))}`] : []),
    ...remarks.tail.map(comment),
  ];
  return `${lines.join('\n')}\n`;
}

const comment = (line: string) => (line === '' ? '#' : `# ${line}`);

type Entries = readonly (readonly [string, string])[];
const flow = (entries: Entries): string =>
  `{ ${entries.map(([key, value]) => `${key}: ${value}`).join(', ')} }`;

function inputEntries({ field, lines, part, shows, active, inactive }: InputBinding): Entries {
  const states: Entries = [
    ['active', list(active)],
    ['inactive', list(inactive)],
  ];
  const usual = part.kind === 'word' || part.kind === 'letter' ? present : '1';
  const left =
    part.kind !== 'whole' && part.kind !== 'character' && active.length === 1 && active[0] === usual;
  const rest = usual === present ? absent : '0';
  const plain = left && inactive.length === 1 && inactive[0] === rest;
  return [
    ['field', quoted(field)],
    ...partEntries(part),
    ['shows', shows],
    ...(plain ? [] : states),
    ...linesEntry(lines),
  ];
}

const activityEntries = ({ field, lines, part, still, moving, homing, fault }: ActivityBinding): Entries => [
  ['field', quoted(field)],
  ...partEntries(part),
  ['still', list(still)],
  ['moving', list(moving)],
  ['homing', list(homing)],
  ['fault', list(fault)],
  ...linesEntry(lines),
];

function partEntries(part: Part): Entries {
  switch (part.kind) {
    case 'whole':
      return [];
    case 'bit':
      return [
        ['bit', String(part.bit)],
        ['base', String(part.base)],
      ];
    case 'character':
      return [
        ['character', String(part.index)],
        ['length', String(part.length)],
      ];
    case 'word':
      return [['word', quoted(part.word)]];
    case 'letter':
      return [['letter', quoted(part.letter)]];
  }
}

function linesEntry({ count, begins, has, values }: LinesMeant): Entries {
  const entries: Entries = [
    ...(count === undefined ? [] : ([['count', String(count)]] as const)),
    ...(begins === undefined ? [] : ([['begins', quoted(begins)]] as const)),
    ...(has === undefined ? [] : ([['has', quoted(has)]] as const)),
    ...(values === undefined
      ? []
      : ([
          ['values', flow(Object.entries(values).map(([path, text]) => [quoted(path), quoted(text)]))],
        ] as const)),
  ];
  return entries.length === 0 ? [] : [['lines', flow(entries)]];
}

/** Twelve figures are more than any scale has; no exponent is written. */
const decimal = (value: number) => value.toFixed(12).replace(/\.?0+$/, '');
const list = (items: readonly string[]) => `[${items.map(quoted).join(', ')}]`;
/** A JSON string is a YAML string. */
const quoted = (text: string) => JSON.stringify(text);
