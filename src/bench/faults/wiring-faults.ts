import { ToolError } from '../../model/tool-error.ts';
import { ms } from '../../model/units.ts';
import type { FieldLine } from '../field-line.ts';
import type { World } from '../world.ts';
import { type Fault, onConnector, onInput, onTwo } from './fault.ts';

/** A loose screw lets its wire go for as long as this, as often as this; ms. */
const opensFor: readonly [number, number] = [40, 110];
const holdsFor: readonly [number, number] = [150, 700];

/** What can be wrong between the switches and the controller. */
export const wiringFaults = {
  'broken-wire': onInput(
    'the signal core is broken between the switch and the controller',
    (world, { line }) => {
      line.core = 'broken';
      world.refresh();
    },
  ),
  crossed: onTwo('the wires of two inputs are on each other’s terminals', (world, one, other) => {
    const { lands, lines } = world.wiring;
    const first = lines.indexOf(one.line);
    const second = lines.indexOf(other.line);
    [lands[first], lands[second]] = [lands[second], lands[first]];
    world.refresh();
  }),
  'shifted-plug': onConnector(
    'the plug is pushed on one pin further along: each wire on the next terminal, the last in the air',
    (world, connector) => {
      const { lands, lines } = world.wiring;
      const own = [...lines.keys()].filter((index) => lines[index]?.truth.connector === connector);
      const places = own.map((index) => lands[index]);
      for (const [pin, index] of own.entries()) lands[index] = places[pin + 1];
      world.refresh();
    },
  ),
  'shorted-together': onTwo('the signal cores of two inputs touch', (world, one, other) => {
    world.wiring.short(one.line, other.line);
    world.refresh();
  }),
  'chained-return': onTwo(
    'the return of the second input goes through the switch of the first: pressing the first opens both',
    (world, one, other) => {
      if (isChained(one.line, other.line))
        throw new ToolError(
          'wrong-usage',
          'The two returns would go through each other.',
          'Chain them one way only.',
        );
      other.line.returnThrough = one.line;
      world.refresh();
    },
  ),
  flickers: onInput('a screw does not hold its wire: the line opens for moments', (world, { line }) => {
    shake(world, line);
  }),
  floating: onInput('no pull-up: with nothing to hold it, the input wanders', (world, { stage }) => {
    stage.hasPullUp = false;
    world.refresh();
  }),
} satisfies Record<string, Fault>;

function isChained(line: FieldLine, through: FieldLine): boolean {
  for (let next = line.returnThrough; next; next = next.returnThrough) if (next === through) return true;
  return false;
}

function shake(world: World, line: FieldLine): void {
  const random = world.random(`loose ${line.truth.name}`);
  world.whileOn(() => {
    line.loose = !line.loose;
    world.refresh();
    return ms(random.within(...(line.loose ? opensFor : holdsFor)));
  });
}
