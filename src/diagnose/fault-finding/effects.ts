import { type Element, type Node, resistor } from '../circuit/network.ts';
import { pressed } from '../circuit/parts/contacts.ts';
import { neighbourOf, type Rig, withNeighbour } from '../circuit/rig.ts';
import type { Actuation, State } from '../circuit/state.ts';
import type { Effect } from './fault.ts';

/** A bolted short and a whisker between neighbours, ohm. */
const shortOhms = 0.01;
const whiskerOhms = 0.05;

export const withElement = (
  rig: Rig,
  name: string,
  change: (element: Element) => Element | undefined,
): Rig => ({
  ...rig,
  network: rig.network.flatMap((each) => {
    if (each.name !== name) return [each];
    const now = change(each);
    return now ? [now] : [];
  }),
});

export const without = (rig: Rig, ...names: readonly string[]): Rig => ({
  ...rig,
  network: rig.network.filter(({ name }) => !names.includes(name)),
});

export const plus = (rig: Rig, ...more: readonly Element[]): Rig => ({
  ...rig,
  network: [...rig.network, ...more],
});

export const opens =
  (...names: readonly string[]): Effect =>
  (rig) =>
    without(rig, ...names);

export const withOhms = (rig: Rig, name: string, ohms: number): Rig =>
  withElement(rig, name, (each) => {
    if (each.kind === 'resistor') return { ...each, ohms };
    return each.kind === 'switch' ? { ...each, closedOhms: ohms } : each;
  });

export const withVolts = (rig: Rig, name: string, volts: number): Rig =>
  withElement(rig, name, (each) => (each.kind === 'voltage' ? { ...each, volts } : each));

export const withFarads = (rig: Rig, farads: number): Rig =>
  withElement(rig, 'filter', (each) => (each.kind === 'capacitor' ? { ...each, farads } : each));

/** One resistance that jumps between several values. */
export const wanders =
  (name: string, ...ohms: readonly number[]): Effect =>
  (rig) =>
    ohms.map((each) => (Number.isFinite(each) ? withOhms(rig, name, each) : without(rig, name)));

export const shorts = (rig: Rig, from: Node, to: Node, ohms = shortOhms): Rig =>
  plus(rig, resistor('fault path', from, to, ohms));

/** The same leak at several values it drifts between. */
export const leaks = (rig: Rig, from: Node, to: Node, ...ohms: readonly number[]): readonly Rig[] =>
  ohms.map((each) => shorts(rig, from, to, each));

export const touchingNeighbour: Effect = (rig, { wiring, world }) =>
  shorts(withNeighbour(rig, wiring, world), 'cable signal', neighbourOf('cable signal'), whiskerOhms);

/** The own signal core ends on the neighbour's terminal; the neighbour's comes here, or nowhere. */
export const landsBeside =
  (neighbours: 'comes here' | 'hangs free'): Effect =>
  (rig, { wiring, world }) => {
    const both = withNeighbour(rig, wiring, world);
    const moved = withElement(both, 'signal plug', (each) => ({ ...each, from: neighbourOf('terminal') }));
    return neighbours === 'hangs free'
      ? without(moved, neighbourOf('signal plug'))
      : withElement(moved, neighbourOf('signal plug'), (each) => ({ ...each, from: 'terminal' }));
  };

/** The contact goes another way when it is worked so. */
export const conducts = (rig: Rig, change: (how: Rig['conducts']) => Partial<Rig['conducts']>): Rig => ({
  ...rig,
  conducts: { ...rig.conducts, ...change(rig.conducts) },
});

export const always =
  (conducting: boolean): Effect =>
  (rig) =>
    conducts(rig, () => everyway(conducting));

const everyway = (conducting: boolean): Readonly<Record<Actuation, boolean>> => ({
  rest: conducting,
  'pressed by hand': conducting,
  'pressed by machine': conducting,
  'let go': conducting,
  tapped: conducting,
});

/** Whatever is done, it stays as it is when nothing is done. */
export const neverWorked: Effect = (rig) => conducts(rig, (how) => everyway(how.rest));
/** Whatever is done, it stays as it is when pressed. */
export const alwaysWorked: Effect = (rig) => conducts(rig, (how) => everyway(how['pressed by hand']));

/** What stands between the disturbance and the core it couples into, ohm (common practice, no source). */
const couplingOhms = 100e3;

/** A burst's envelope on the cable while something runs: so many volts behind the coupling, either way, and gone. */
export const picksUp =
  (volts: number, ...running: readonly State['running'][]): Effect =>
  (rig, { state }) =>
    running.includes(state.running) ? [rig, noisy(rig, volts), noisy(rig, -volts)] : rig;

const noisy = (rig: Rig, volts: number): Rig =>
  plus(
    rig,
    { kind: 'voltage', name: 'disturbance', from: 'disturbance', to: '0 V', volts },
    resistor('coupling', 'disturbance', 'cable signal', couplingOhms),
  );

export const contactOhms = (...ohms: readonly number[]): Effect => wanders(pressed, ...ohms);

export const told =
  (change: Partial<Rig['setting']>): Effect =>
  (rig) => ({ ...rig, setting: { ...rig.setting, ...change } });

export const nothingElectrical: Effect = (rig) => rig;
