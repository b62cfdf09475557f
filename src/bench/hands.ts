import { z } from 'zod';
import { ToolError } from '../model/tool-error.ts';
import type { Bench } from './bench.ts';
import { HandRefused } from './hand-refused.ts';

/** What came of one line of hands: done (motion: begun), or what was found wrong with it and what would be allowed. */
export type HandAnswer =
  | { readonly kind: 'did'; readonly do: string; readonly [key: string]: unknown }
  | { readonly kind: 'wrong'; readonly found: string; readonly allowed: readonly string[] };

/** A switch is named as its subject, or by `input` and `switch` apart, as an ask names them. */
const which = { switch: z.string().optional(), input: z.string().optional() };
const plug = { ...which, at: z.enum(['switch', 'controller']).default('switch') };
const axis = z.string();
const move = {
  axis,
  direction: z.enum(['positive', 'negative']).default('positive'),
  distance: z.number(),
  unit: z.enum(['mm', 'inch']).default('mm'),
};
const power = { what: z.enum(['motors', 'controller']), to: z.enum(['off', 'on']) };

const hands: ReadonlyMap<unknown, Hand> = new Map([
  ['press', hand(which, (bench, said) => bench.press(subjectOf(bench, said)))],
  ['release', hand(which, (bench, said) => bench.release(subjectOf(bench, said)))],
  ['unplug', hand(plug, (bench, said) => bench.unplug(subjectOf(bench, said), said.at))],
  ['replug', hand(plug, (bench, said) => bench.replug(subjectOf(bench, said), said.at))],
  ['jumper', hand(plug, (bench, said) => bench.setJumper(subjectOf(bench, said), said.at, true))],
  ['unjumper', hand(plug, (bench, said) => bench.setJumper(subjectOf(bench, said), said.at, false))],
  ['seek', hand({ axis }, (bench, said) => bench.seek(said.axis))],
  ['home', hand({ axis: axis.default('all') }, (bench, said) => bench.home(said.axis))],
  ['move', hand(move, (bench, said) => bench.move(said.axis, millimetres(said)))],
  ['clear', hand({}, (bench) => bench.clear())],
  ['power', hand(power, (bench, said) => bench.power(said.what, said.to))],
  ['fault', hand({ fault: z.string() }, (bench, said) => bench.plant(said.fault))],
]);

/** Does on the bench what one JSON line says. Never throws for what the line says. */
export function handLine(bench: Bench, line: string): HandAnswer {
  let said: unknown;
  try {
    said = JSON.parse(line);
  } catch {
    return wrong(`no JSON: ${line.slice(0, 80)}`, ['{"do":"press","switch":"x-home"}']);
  }
  const { do: name, ...rest } = z.looseObject({ do: z.unknown() }).safeParse(said).data ?? { do: undefined };
  const known = hands.get(name);
  if (!known) return wrong(`do: ${shown(name)}`, [...hands.keys()].map(String));
  try {
    return known(bench, String(name), rest);
  } catch (error) {
    if (error instanceof HandRefused) return wrong(error.message, error.allowed);
    if (error instanceof ToolError) return wrong(error.message, [error.tryNext]);
    throw error;
  }
}

type Hand = (bench: Bench, name: string, said: Record<string, unknown>) => HandAnswer;

function hand<Keys extends z.ZodRawShape>(
  keys: Keys,
  act: (bench: Bench, said: z.output<z.ZodObject<Keys, z.core.$strict>>) => void,
): Hand {
  const shape = z.strictObject(keys);
  return (bench, name, said) => {
    const read = shape.safeParse(said);
    if (!read.success) return wrongKey(said, Object.keys(keys), read.error);
    act(bench, read.data);
    return { kind: 'did', do: name, ...read.data };
  };
}

function wrongKey(said: Record<string, unknown>, keys: readonly string[], error: z.ZodError): HandAnswer {
  const [issue] = error.issues;
  if (issue?.code === 'unrecognized_keys') return wrong(`unknown: ${issue.keys.join(', ')}`, keys);
  const key = String(issue?.path[0]);
  const found = `${key}: ${shown(said[key])}`;
  if (issue?.code === 'invalid_value') return wrong(found, issue.values.map(String));
  return wrong(found, issue?.code === 'invalid_type' ? [`a ${issue.expected}`] : keys);
}

const wrong = (found: string, allowed: readonly string[]): HandAnswer => ({ kind: 'wrong', found, allowed });

interface Which {
  readonly switch?: string | undefined;
  readonly input?: string | undefined;
}

function subjectOf(bench: Bench, { input, switch: name }: Which): string {
  const { switches } = bench.eyes;
  const apart = `${input}/${name}`;
  if (switches.includes(apart)) return apart;
  const subject = name ?? input;
  if (subject === undefined) throw new HandRefused('no switch named', switches);
  return subject;
}

const millimetres = ({ distance, direction, unit }: { distance: number; direction: string; unit: string }) =>
  distance * (unit === 'inch' ? 25.4 : 1) * (direction === 'negative' ? -1 : 1);

const shown = (value: unknown): string =>
  value === undefined ? 'nothing' : (JSON.stringify(value) ?? String(value)).slice(0, 80);
