import { type Network, type Node, resistor, type Switch } from '../network.ts';
import type { Numbers } from '../values.ts';

/** The contact that a press works is always called so; whether it is closed is decided when a state is looked at. */
export const pressed = 'contact';

const contact = (name: string, from: Node, to: Node, v: Numbers): Switch => ({
  kind: 'switch',
  name,
  from,
  to,
  closed: false,
  closedOhms: v('closed contact'),
  openOhms: v('open contact'),
});

export const oneContact = (v: Numbers): Network => [contact(pressed, 'device signal', 'device common', v)];

/** Three closed contacts one after the other; the pressed one is the first. Connectors between them: 0.05 ohm each. */
export const inSeries = (v: Numbers): Network => [
  contact(pressed, 'device signal', 'after contact 1', v),
  resistor('connector 1', 'after contact 1', 'before contact 2', 0.05),
  contact('contact 2', 'before contact 2', 'after contact 2', v),
  resistor('connector 2', 'after contact 2', 'before contact 3', 0.05),
  contact('contact 3', 'before contact 3', 'device common', v),
];

/** Three open contacts side by side, each on its own leg of 0.05 ohm. */
export const inParallel = (v: Numbers): Network =>
  ['1', '2', '3'].flatMap((leg) => [
    resistor(`leg ${leg}`, 'device signal', `leg ${leg} end`, 0.05),
    contact(leg === '1' ? pressed : `contact ${leg}`, `leg ${leg} end`, 'device common', v),
  ]);

/** A contact with a resistor before it and one across it: four states of the line can be told apart. */
export const supervised = (v: Numbers): Network => [
  resistor('contact resistor', 'device signal', 'after contact resistor', v('contact resistor')),
  contact(pressed, 'after contact resistor', 'device common', v),
  resistor('end resistor', 'after contact resistor', 'device common', v('end resistor')),
];
