import { knownOnly } from '../model/known-only.ts';
import { type Input, inputOf, type Machine, type Switch } from '../model/machine.ts';
import type { Verdict } from '../model/verdict.ts';
import type { InputRow } from './schema/input-row.ts';
import { unlessUnknown } from './unless-unknown.ts';

/** One row a switch: what the machine file declares beside what was found. Without verdicts nothing is found. */
export const inputMap = (machine: Machine, verdicts: readonly Verdict[] = []): readonly InputRow[] =>
  machine.inputs.flatMap((input) =>
    input.switches.map((each) => ({
      subject: each.subject,
      input: input.name,
      declared: declared(each, input),
      found: found(each, verdicts, machine),
    })),
  );

/** Neither a press nor a plug came to anything: that it was quiet at rest tells nothing of a switch. */
export const isUntested = ({ found }: InputRow): boolean =>
  found.answersOn === undefined &&
  !found.noAnswer &&
  found.contact === undefined &&
  found.breakNoticed === undefined;

function declared(each: Switch, input: Input): InputRow['declared'] {
  return {
    duty: [...each.duty],
    reach: each.reach,
    joined: input.joined,
    sharedWith: input.switches.filter((other) => other !== each).map((other) => other.subject),
    ...knownOnly({
      axis: each.axis,
      end: each.end,
      side: each.side,
      place: each.place,
      motor: each.motor,
      contact: unlessUnknown(each.contact),
      sensor: unlessUnknown(each.sensor),
      circuit: circuitText(each),
      voltage: voltageText(each),
      polarity: unlessUnknown(input.polarity),
      terminal: input.terminal,
      connector: input.connector,
      overtravel: each.overtravel as number | undefined,
    }),
  };
}

function circuitText({ circuit }: Switch): string | undefined {
  if (circuit === undefined) return undefined;
  const supply = circuit.supply === undefined ? {} : { supply: `${circuit.supply} V` };
  const values = Object.entries({ ...supply, ...circuit.values }).filter(([key]) => key !== 'kind');
  return [circuit.kind, ...values.map(([key, value]) => `${key} ${value}`)].join(', ');
}

function voltageText({ voltage }: Switch): string | undefined {
  if (voltage.known === 'not-stated') return undefined;
  if (voltage.known === 'told-unknown') return 'said to be unknown';
  return `${voltage.volts} V${voltage.from === 'circuit' ? ' (the circuit’s supply)' : ''}`;
}

function found(each: Switch, verdicts: readonly Verdict[], machine: Machine): InputRow['found'] {
  const of = (check: Verdict['check'], subject: string) =>
    verdicts.find((verdict) => verdict.check === check && verdict.subject === subject);
  const rest = of('rest', each.input)?.facts.rest;
  const press = of('press', each.subject);
  const wire = of('open-wire', each.subject);
  const answered = press?.facts.presses?.answered ?? 0;
  const own = inputOf(machine, each.input) && answered > 0 ? each.input : undefined;
  return knownOnly({
    contact: wire?.facts.contactFound,
    noAnswer: press?.status === 'failed' && press.facts.presses?.answered === 0 ? true : undefined,
    answersOn: press?.facts.answeredBy ?? wire?.facts.answeredBy ?? own,
    restLevel: rest?.edges === 0 && rest.level !== '?' ? rest.level : undefined,
    restActive: rest?.edges === 0 && rest.active !== '?' ? rest.active : undefined,
    polarity: polarityFound(press, wire),
    breakNoticed: breakNoticed(wire),
  });
}

const hasKind = (verdict: Verdict | undefined, ...kinds: readonly string[]): boolean =>
  verdict?.findings.some(({ kind }) => kinds.includes(kind)) ?? false;

function polarityFound(press: Verdict | undefined, wire: Verdict | undefined) {
  if (hasKind(press, 'polarity-reversed') || hasKind(wire, 'polarity-reversed')) return 'reversed';
  const row = wire?.facts.row;
  if (row?.by === 'active' && row.bits.startsWith('01')) return 'right';
  const proved = press?.status === 'proved' || press?.status === 'limited';
  return proved && !hasKind(press, 'polarity-unknown') ? 'right' : undefined;
}

function breakNoticed(wire: Verdict | undefined): boolean | undefined {
  if (hasKind(wire, 'break-undetected')) return false;
  const row = wire?.facts.row;
  if (row?.by === 'active' && row.bits === '011') return true;
  return wire?.status === 'proved' && wire.facts.contactFound === 'normally closed' ? true : undefined;
}
