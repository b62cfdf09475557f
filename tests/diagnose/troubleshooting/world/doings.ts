import { type State, state } from '../../../../src/diagnose/circuit/state.ts';
import type { Wiring } from '../../../../src/diagnose/circuit/wiring.ts';
import { type DeedName, deeds } from '../../../../src/diagnose/troubleshooting/deeds/all.ts';
import type { Probe } from '../../../../src/diagnose/troubleshooting/probe.ts';
import type { Look } from './looks.ts';

const look = (name: string, change: Partial<State> = {}): Look => ({ name, state: state(change) });

const rest = look('rest');
const letGo = look('let go', { actuation: 'let go' });

/** A loose wire shows while current flows, so an open contact is held closed meanwhile. */
const closing = ({ contact }: Wiring): Partial<State> =>
  contact === 'normally open' ? { actuation: 'pressed by hand' } : {};

const out = (end: 'controller' | 'switch') => look(`out at ${end}`, { plug: `out at ${end}` });
const linked = (end: 'controller' | 'switch') =>
  look(`linked at ${end}`, { plug: `out at ${end}`, link: `at ${end}` });

const hands: Readonly<Partial<Record<DeedName, (wiring: Wiring) => readonly Look[]>>> = {
  rest: () => [rest],
  press: () => [rest, look('pressed by hand', { actuation: 'pressed by hand' }), letGo],
  tap: () => [rest, look('tapped', { actuation: 'tapped' }), letGo],
  carriage: () => [rest, look('pressed by machine', { actuation: 'pressed by machine' }), letGo],
  neighbour: () => [rest, look('neighbour pressed', { neighbour: 'pressed' })],
  tug: (wiring) => [look('tugged', { handling: 'tugged', ...closing(wiring) })],
  flex: (wiring) => [look('flexed', { handling: 'cable flexed', ...closing(wiring) })],
  'unplug-controller': () => [out('controller')],
  'unplug-switch': () => [out('switch')],
  'link-controller': () => [out('controller'), linked('controller')],
  'link-switch': () => [out('switch'), linked('switch')],
  lamp: (wiring) => [look('lamp', closing(wiring))],
  drives: () => [look('drives', { running: 'drives' })],
  spindle: () => [look('spindle', { running: 'spindle' })],
  axis: () => [look('axis', { running: 'axis' })],
};

export function probeOf(name: DeedName): Probe | undefined {
  const deed = deeds.find((each) => each.name === name);
  return deed && 'probe' in deed ? deed.probe : undefined;
}

/** What has to be looked at while a deed is done; nothing where the person's own eyes answer. */
export function looksOf(name: DeedName, wiring: Wiring): readonly Look[] {
  const probe = probeOf(name);
  if (!probe) return hands[name]?.(wiring) ?? [];
  const current = probe.quantity === 'current';
  const [from, to] = current ? (['meter +', 'cable signal'] as const) : probe.between(wiring);
  const meter = { quantity: probe.quantity, from, to, undone: probe.undone };
  return [{ name, state: state(probe.state(wiring)), meter }];
}
