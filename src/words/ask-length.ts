import type { LengthAsk, LengthPlace } from '../model/ask.ts';
import type { ConfirmOf } from '../model/confirm-ask.ts';
import type { Machine } from '../model/machine.ts';
import { visible } from '../model/visible.ts';
import { cautions, dropCautions } from './cautions.ts';
import type { AskWords } from './instruction.ts';

interface Named {
  readonly axis: string;
  readonly unit: string;
  readonly system: string;
  readonly machine: Machine;
}

const words = {
  'trip on a dial gauge': ({ axis, unit }) => ({
    text: `Read the dial gauge that stands against ${axis} where it came to rest, in ${unit}. Type the number.`,
    cautions: cautions('stayClear', 'fingers', 'listens'),
    short: `Dial gauge at ${axis}, ${unit}`,
  }),
  'way of the tool over the work': ({ axis, unit }) => ({
    text: `Measure how far ${axis} really went in that last move, in ${unit}, with a calliper, a gauge or a rule, spindle off and the axis at rest. Type the length, without a sign.`,
    cautions: cautions('stayClear', 'fingers'),
    short: `How far did ${axis} go, ${unit}?`,
  }),
  'lower soft limit': ({ axis, unit }) => ({
    text: `The machine file tells no soft limits of ${axis}. What does your controller have as its lower one, in machine coordinates, in ${unit}? Type the number with its sign; not sure where it has none.`,
    cautions: cautions('readOnly'),
    short: `Lower soft limit of ${axis}, ${unit}`,
  }),
  'upper soft limit': ({ axis, unit }) => ({
    text: `And the upper soft limit of ${axis}, in machine coordinates, in ${unit}? Type the number with its sign.`,
    cautions: cautions('readOnly'),
    short: `Upper soft limit of ${axis}, ${unit}`,
  }),
  'work zero in machine coordinates': ({ axis, unit, system }) => ({
    text: `The program counts in ${system}. Where is the zero of ${system} along ${axis}, in machine coordinates, in ${unit}, without any temporary shift (G92)? Type the number with its sign.`,
    cautions: cautions('readOnly'),
    short: `${system} zero along ${axis}, ${unit}`,
  }),
  'temporary shift': ({ axis, unit }) => ({
    text: `Is a temporary shift (G92) of ${axis} in force now, before the program begins? Type its length in ${unit} with its sign, as your controller shows it; 0 where there is none.`,
    cautions: cautions('readOnly'),
    short: `Temporary shift of ${axis}, ${unit}; 0: none`,
  }),
  'overtravel of the switch': ({ axis, unit }) => ({
    text: `How far may the home switch of ${axis} be driven past its trip before it is harmed, in ${unit}? Its data sheet calls it overtravel. Not sure where you do not know.`,
    cautions: cautions('readOnly'),
    short: `Overtravel of ${axis}'s switch, ${unit}`,
  }),
  'from the trip to the hard stop': ({ axis, unit, machine }) => ({
    text: `How far can ${axis} still go from where its home switch trips to where it meets metal, in ${unit}? Measure it with motor power off, moving the axis by hand, or say that you are not sure.`,
    cautions: [...cautions('motorsOff', 'fingers', 'clothing'), ...dropCautions(machine)],
    short: `Trip to hard stop of ${axis}, ${unit}`,
  }),
} satisfies Record<LengthPlace, (named: Named) => AskWords>;

/** A length that only a person, an instrument or the controller's own settings can tell. */
export const lengthWords = (ask: LengthAsk, machine: Machine): AskWords =>
  words[ask.where]({
    axis: ask.axis,
    unit: ask.unit,
    system: visible(ask.system ?? 'its coordinate system'),
    machine,
  });

export const longWayFree = (
  { axis, shows: [way] }: ConfirmOf<'long-way-free'>,
  machine: Machine,
): AskWords => ({
  text: `Next ${axis} is moved by ${way} and back in steps, by your own control, and each step is measured. Is so much of its way free from where it stands, no tool in, spindle off?`,
  cautions: [...cautions('listens', 'stayClear', 'clothing'), ...dropCautions(machine)],
  short: `${way} of ${axis} free?`,
});

export const hasGauge = ({ axis }: ConfirmOf<'has-gauge'>): AskWords => ({
  text: `Does a dial gauge stand so that it can be read each time ${axis} has homed? Then each reading is asked for. No: the positions of the stream are used, which are commanded and not measured.`,
  cautions: cautions('stayClear', 'fingers'),
  short: `A dial gauge at ${axis}?`,
});
