import { type Network, type Node, resistor } from '../../../../src/diagnose/circuit/network.ts';

/** A meter as it is put: between which nodes, on what, with which ends of the cable undone. */
export interface Metered {
  readonly quantity: 'resistance' | 'voltage' | 'current';
  readonly from: Node;
  readonly to: Node;
  readonly undone: readonly ('controller' | 'switch')[];
}

/** An ordinary hand-held meter: 10 Mohm on volts, 10 ohm on milliamperes, a quarter of a volt behind 10 kohm on ohms. */
const voltsOhms = 10e6;
const shuntOhms = 10;
const testVolts = 0.25;
const testOhms = 10e3;

const undoneBy = { controller: ' plug', switch: ' clamp' } as const;
const opened = 'signal plug';

/** The netlist with the meter on it; a current meter stands in the place of the plug's signal contact. */
export function metered(network: Network, { quantity, from, to, undone }: Metered): Network {
  const left = network.filter(
    ({ name }) => name.startsWith('neighbour') || !undone.some((end) => name.endsWith(undoneBy[end])),
  );
  if (quantity === 'voltage') return [...left, resistor('meter', from, to, voltsOhms)];
  if (quantity === 'current')
    return left.flatMap((part) =>
      part.name === opened
        ? [{ ...part, to: 'meter +' }, resistor('meter', 'meter +', part.to, shuntOhms)]
        : [part],
    );
  return [
    ...left.filter(({ kind }) => kind !== 'voltage' && kind !== 'current'),
    resistor('meter', 'meter +', from, testOhms),
    { kind: 'voltage', name: 'meter battery', from: 'meter +', to, volts: testVolts },
  ];
}

/** What the display shows, from the volts at both ends: ohm, V or A. */
export function displayed(quantity: Metered['quantity'], from: number, to: number): number {
  const volts = from - to;
  if (quantity === 'voltage') return volts;
  if (quantity === 'current') return Math.abs(volts) / shuntOhms;
  const share = Math.abs(volts) / testVolts;
  return share >= 1 - 1e-6 ? Number.POSITIVE_INFINITY : (testOhms * share) / (1 - share);
}
