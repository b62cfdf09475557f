import type { Node } from '../circuit/network.ts';
import { atRest, type State, state } from '../circuit/state.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Proof } from './fault.ts';

type Of = (wiring: Wiring) => Proof;

export const looking: Of = () => ({ by: 'looking' });

/** A core from end to end. */
export const alongCore =
  (core: 'signal' | 'common', how: Partial<State> = {}): Of =>
  () => ({ by: 'ohms', from: `cable ${core}`, to: `switch ${core}`, undone: 'both ends', state: state(how) });

/** From the signal core to something it must not touch. */
export const fromSignalTo =
  (to: (wiring: Wiring) => Node): Of =>
  (wiring) => ({ by: 'ohms', from: 'cable signal', to: to(wiring), undone: 'both ends', state: atRest });

const pressedByHand = state({ actuation: 'pressed by hand' });
/** The state in which a sound contact is closed, and the one in which it is open. */
export const whenClosed = ({ contact }: Wiring): State =>
  contact === 'normally open' ? pressedByHand : atRest;
export const whenOpen = ({ contact }: Wiring): State =>
  contact === 'normally open' ? atRest : pressedByHand;

/** The switch alone. */
export const acrossContact =
  (when: (wiring: Wiring) => State): Of =>
  (wiring) => ({
    by: 'ohms',
    from: 'device signal',
    to: 'device common',
    undone: 'at switch',
    state: when(wiring),
  });

export const atTerminal =
  (when: (wiring: Wiring) => State): Of =>
  (wiring) => ({ by: 'volts', from: 'terminal', to: '0 V', state: when(wiring) });

export const volts =
  (from: Node, to: Node, when: (wiring: Wiring) => State = () => atRest): Of =>
  (wiring) => ({ by: 'volts', from, to, state: when(wiring) });

export const supplyAtSensor = volts('device supply', 'device common');

export const loopCurrent =
  (when: (wiring: Wiring) => State): Of =>
  (wiring) => ({ by: 'amps', through: 'signal plug', state: when(wiring) });

export const onBoard =
  (from: Node, to: Node): Of =>
  () => ({ by: 'ohms', from, to, undone: 'at controller', state: atRest });

export const running = (what: State['running']) => (): State => state({ running: what });
export const pressing = (): State => pressedByHand;
export const unplugged = (): State => state({ plug: 'out at controller' });
