import { registered } from '../../src/diagnose/checks/registry.ts';
import { faultNames } from '../../src/model/fault-names.ts';
import type { CheckName, Status, Verdict } from '../../src/model/verdict.ts';
import { type AsItIs, asItIs, belies, isDangerous, isVisible, isVisibleAtTimes } from './as-it-is.ts';
import { type CircuitMachine, circuitMachines, comesAndGoes, ownInput } from './circuit-machines.ts';
import { commissioned, endsProved, machineFile } from './commissioned.ts';

/** The checks that a person does with hands and plugs. */
export const handsAndPlugs: readonly CheckName[] = registered.filter((check) =>
  ['rest', 'press', 'open-wire'].includes(check),
);

/** A machine with what it really does; `it` and `sound` come from the bench alone. */
export interface Looked {
  readonly machine: CircuitMachine;
  readonly it: AsItIs;
  readonly sound: AsItIs;
}

/** What is the same to the last number is played once. */
function once<In, Out>(key: (given: In) => string, of: (given: In) => Out): (given: In) => Out {
  const known = new Map<string, Out>();
  return (given) => {
    const name = key(given);
    const found = known.get(name) ?? of(given);
    known.set(name, found);
    return found;
  };
}

const look = once((bench: CircuitMachine['bench']) => JSON.stringify(bench), asItIs);

export const lookedAt = (contact: CircuitMachine['wiring']['contact']): readonly Looked[] =>
  circuitMachines(contact).map((machine) => ({
    machine,
    it: look(machine.bench),
    sound: look(machine.sound),
  }));

export const isIn = ({ it, sound }: Looked): boolean => isVisible(it, sound) && isDangerous(it, sound);

/** Why a machine is left out, in words; undefined where it is in. */
export function leftOut(looked: Looked): string | undefined {
  if (isIn(looked)) return undefined;
  if (isVisible(looked.it, looked.sound)) return 'seen, and not dangerous: every press still shows';
  if (isVisibleAtTimes(looked.it, looked.sound))
    return 'comes and goes: now and then as good as sound for a while';
  return looked.machine.shows ?? 'reads as a sound one in every state that hands and plugs can bring about';
}

export const session = (checks: readonly CheckName[]) =>
  once(
    (machine: CircuitMachine) => JSON.stringify(machine.bench) + machineFile(machine),
    (machine: CircuitMachine) => commissioned(machine, checks),
  );

/** What comes and goes is tried with this many persons and courses of events, what does not with one. */
const courses = 3;
const playedBy = (machine: CircuitMachine): readonly CircuitMachine[] =>
  comesAndGoes(machine.bench)
    ? Array.from({ length: courses }, (_, at) => ({ ...machine, bench: { ...machine.bench, seed: at + 1 } }))
    : [machine];

/** Everything said that is not so: an input that ends proved, and a single check that claims what the bench does not do. */
export async function untrue(
  some: readonly Looked[],
  commission: (machine: CircuitMachine) => Promise<readonly Verdict[]>,
): Promise<{ readonly proved: readonly string[]; readonly claims: readonly string[] }> {
  const proved = new Set<string>();
  const claims = new Set<string>();
  for (const { machine, it } of some)
    for (const played of playedBy(machine)) {
      const verdicts = await commission(played);
      const said = (check: CheckName): Status | undefined =>
        verdicts.find((each) => each.subject === ownInput && each.check === check)?.status;
      if (endsProved(verdicts)) proved.add(machine.named);
      for (const check of ['rest', 'press', 'open-wire'] as const)
        if (said(check) === 'proved' && belies[check](it)) claims.add(`${check}: ${machine.named}`);
    }
  return { proved: [...proved], claims: [...claims] };
}

/** So many pairs of a wiring and a fault are in, so many out, and why; a pair is in where any board shows it. */
export function accountOf(all: readonly Looked[], wirings: number): readonly string[] {
  const pairs = new Map<string, Set<string | undefined>>();
  for (const each of all) {
    const { named } = each.machine;
    pairs.set(named, (pairs.get(named) ?? new Set()).add(leftOut(each)));
  }
  const inside = [...pairs.values()].filter((reasons) => reasons.has(undefined)).length;
  const why = new Map<string, number>();
  for (const reasons of pairs.values()) {
    const [first] = reasons;
    if (!reasons.has(undefined) && first !== undefined) why.set(first, (why.get(first) ?? 0) + 1);
  }
  const singles = new Set(
    all.filter(({ machine }) => machine.faults.length === 1).map(({ machine }) => machine.named),
  );
  return [
    `${pairs.size} pairs of a wiring and what is wrong in it (${singles.size} single faults), ${all.length} boards: ${inside} pairs in`,
    `left out: ${wirings * faultNames.length - singles.size}: cannot happen in that wiring`,
    ...[...why].map(([reason, count]) => `left out: ${count}: ${reason}`),
  ];
}
