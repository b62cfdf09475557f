import type { DeedName } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import { bin } from '../../../../src/diagnose/troubleshooting/probe.ts';
import {
  type Beside,
  besides,
  bounces,
  jumps,
  type Neighbouring,
  type Outcome,
  type Own,
  outThenLinked,
  stays,
  still,
  to,
} from '../../../../src/model/outcomes.ts';
import { probeOf } from './doings.ts';
import { chanceFor, happens } from './draws.ts';
import { eyesSee } from './eyes.ts';
import type { Machine } from './machine.ts';
import { displayed } from './metered.ts';
import { faradsOf, heard, indexOfVolts, numberAt, type Taken } from './readings.ts';
import { troubleOf } from './troubles.ts';

/** What is told to the troubleshooter of a deed that was done as asked. `taken`: its looks, in their order. */
export function outcomeOf(machine: Machine, deed: DeedName, taken: readonly Taken[]): Outcome {
  const [first, second, third] = taken;
  const chance = chanceFor(machine.seed, 'told', deed);
  if (!first) return eyesSee(machine, deed, chance) ? 'yes' : 'no';
  if (first.look.meter) return metering(deed, first, chance);
  switch (deed) {
    case 'lamp':
      return isLit(first) ? 'on' : 'off';
    case 'link-controller':
    case 'link-switch':
      return outThenLinked(heard(first), second ? heard(second) : jumps);
    case 'neighbour':
      return second ? neighbour(machine, first, second, chance) : jumps;
    case 'press':
    case 'tap':
    case 'carriage':
      if (!second || !third) return jumps;
      return besides(pushed(machine, deed, [first, second, third], chance), beside(machine, first, second));
    default:
      return heard(first);
  }
}

function pushed(
  machine: Machine,
  deed: DeedName,
  [before, during, after]: readonly [Taken, Taken, Taken],
  chance: () => number,
): Own {
  const [one, other, then] = [
    heard(before),
    heard(during, 'pin', deed === 'tap' ? before : undefined),
    heard(after),
  ];
  if (one === jumps || other === jumps) return jumps;
  if (one === other) return still;
  if (then === other) return stays(other);
  return deed === 'press' && bounceShows(machine, during, chance) ? bounces(other) : to(other);
}

/** A sensor's output has no contact that bounces; held by hand at the edge of its range it may chatter all the same. */
function bounceShows(machine: Machine, during: Taken, chance: () => number): boolean {
  const { device, stage } = machine.wiring.template;
  const [input] = during.inputs;
  if (!input || stage === 'window') return false;
  const metal = ['contact', 'stop contact', 'door contact', 'touch plate', 'touch probe'].includes(device);
  const ohms = numberAt(during, 0, during.question.volts.length);
  const delay = 0.7 * ohms * faradsOf(input) * 1000;
  const passes = input.filterMs < machine.unit.bounceMs && delay < machine.unit.bounceMs;
  return passes && happens(chance, machine.unit.bounceTold * (metal ? 1 : 0.3));
}

const besidePin = 'neighbour pin';

function beside(machine: Machine, before: Taken, during: Taken): Beside {
  if (!before.question.pins.includes(besidePin) || heard(before, besidePin) === heard(during, besidePin))
    return 'no other';
  return machine.faults.includes('ends-swapped') || machine.unit.besideIsOtherEnd ? 'other end' : 'another';
}

/** Pressing the switch of the input beside: which input answers. In a row of clamps shifted by one it is the one after. */
function neighbour(machine: Machine, before: Taken, during: Taken, chance: () => number): Neighbouring {
  if (machine.faults.includes('plug-shifted')) return happens(chance, 0.8) ? 'third' : 'none';
  const [one, other] = [heard(before), heard(during)];
  if (one === jumps || other === jumps) return jumps;
  const reached = machine.faults.some((fault) => troubleOf(fault).beside);
  const its =
    !reached ||
    (before.question.pins.includes(besidePin) && heard(before, besidePin) !== heard(during, besidePin));
  if (one !== other) return its ? 'both' : 'this one';
  return its ? 'own' : 'none';
}

/** Lit where it is fed and works: enough volts, or for two wires enough current. */
function isLit(look: Taken): boolean {
  const { machine, inputs } = look;
  const volts = (node: string) => numberAt(look, 0, indexOfVolts(look, node));
  const worked = inputs[0]?.conducts(inputs[0].worked) ?? false;
  if (machine.wiring.template.device === 'two-wire') {
    const core = inputs[0]?.parts.find(({ name }) => name === 'signal core');
    // A core that is broken carries nothing, whatever stands across the break.
    const amps = core?.kind === 'resistor' ? (volts('cable signal') - volts('switch signal')) / core.ohms : 0;
    return worked && Math.abs(amps) > 1e-3;
  }
  const [off, on] = machine.board.numbers('supply') > 5.5 ? [6, 9] : [2.5, 3.5];
  return worked && volts('device supply') - volts('device common') > off + machine.unit.sensor * (on - off);
}

function metering(deed: DeedName, look: Taken, chance: () => number): Outcome {
  const probe = probeOf(deed);
  const { meter } = look.look;
  if (!probe || !meter) return jumps;
  const moment = Math.floor(chance() * look.at.length);
  const [from, to] = [0, 1].map((place) => numberAt(look, moment, place));
  const shown = look.machine.unit.meter * displayed(meter.quantity, from ?? 0, to ?? 0);
  return bin(meter.quantity === 'voltage' ? shown / nominalSupply(look.machine) : shown, probe.limits);
}

/** The volts the wiring is declared with: what the supply really delivers nobody knows beforehand. */
const nominalSupply = ({ wiring }: Machine): number => wiring.values.supply?.nominal ?? 5;
