import { crossing } from '../../../../src/diagnose/circuit/response.ts';
import { tapLasts } from '../../../../src/diagnose/circuit/state.ts';
import { glimpseOf } from '../../../../src/diagnose/troubleshooting/glimpse.ts';
import { type Glimpse, jumps } from '../../../../src/model/outcomes.ts';
import { ms } from '../../../../src/model/units.ts';
import { chanceFor } from './draws.ts';
import type { Input } from './input.ts';
import { type Answer, type Look, type Posed, posed } from './looks.ts';
import type { Machine } from './machine.ts';

/** A look with its numbers. */
export interface Taken extends Posed {
  readonly machine: Machine;
  readonly look: Look;
  readonly answer: Answer;
}

export const taken = (machine: Machine, look: Look, answer: Answer): Taken => ({
  ...posed(machine, look),
  machine,
  look,
  answer,
});

/** The number at a moment: a place in the question's volts, then its pins' ohms. */
export const numberAt = (
  { answer, at }: Pick<Taken, 'answer' | 'at'>,
  moment: number,
  place: number,
): number => answer[at[moment] ?? 0]?.[place] ?? 0;

export const indexOfVolts = ({ question }: Taken, node: string): number => question.volts.indexOf(node);
const indexOfOhms = ({ question }: Taken, pin: string): number =>
  question.volts.length + question.pins.indexOf(pin);

/** What the stream tells of the input over the look: one word, or that it jumps. */
export function heard(look: Taken, pin = 'pin', instead?: Taken): Glimpse {
  const { machine, inputs } = look;
  const chance = chanceFor(machine.seed, 'noise', look.look.name, pin);
  const words = inputs.map((input, moment) => {
    const shown = instead && isLost(look, instead, moment, input) ? instead : look;
    const volts = numberAt(shown, moment, indexOfVolts(shown, pin));
    const sway = machine.unit.humAmps * numberAt(shown, moment, indexOfOhms(shown, pin));
    const noisy =
      volts + Math.sin(2 * Math.PI * chance()) * sway + (chance() - 0.5) * 2 * machine.unit.noiseVolts;
    return wordFor(noisy, input, machine, pin);
  });
  return words.every((word) => word === words[0]) ? (words[0] ?? jumps) : jumps;
}

/** A tap that the filter does not let through. */
function isLost(tapped: Taken, rest: Taken, moment: number, input: Input): boolean {
  if (input.filterMs > tapLasts) return true;
  const limits = limitsOf(tapped.machine);
  if (limits.kind === 'window') return false;
  const [start, end] = [rest, tapped].map((each) => numberAt(each, moment, indexOfVolts(each, 'pin')));
  if (start === undefined || end === undefined) return false;
  const threshold = limits.low + tapped.machine.unit.threshold * (limits.high - limits.low);
  const tau = ms(numberAt(tapped, moment, indexOfOhms(tapped, 'pin')) * faradsOf(input) * 1000);
  return crossing(start, end, threshold, tau) > tapLasts;
}

export const faradsOf = ({ parts }: Input): number =>
  parts.reduce(
    (sum, part) => (part.kind === 'capacitor' && part.name === 'filter' ? sum + part.farads : sum),
    0,
  );

const limitsOf = ({ wiring, board }: Machine) => wiring.template.limits(board.numbers, wiring.family);

function wordFor(volts: number, input: Input, machine: Machine, pin: string): Glimpse {
  const own = pin === 'pin';
  const setting = own ? input : { enabled: true, inverted: false };
  const { conducting, trips } =
    own && input.stuck !== 'no'
      ? { conducting: input.stuck === 'conducting', trips: false }
      : levelAt(volts, machine, own ? machine.unit.threshold : machine.unit.besideThreshold);
  const active = trips || (conducting === (machine.wiring.contact === 'normally open')) !== setting.inverted;
  return glimpseOf(conducting, setting.enabled && active, machine.around.told);
}

function levelAt(volts: number, machine: Machine, unit: number) {
  const limits = limitsOf(machine);
  if (limits.kind === 'window') {
    const band = limits.limits.filter((limit) => volts > limit * (0.98 + 0.04 * unit)).length;
    return { conducting: band < 2, trips: band === 0 || band === 3 };
  }
  const low = volts <= limits.low + unit * (limits.high - limits.low);
  return { conducting: low === (limits.lowMeans === 'conducting'), trips: false };
}
