import type { CauseTopic } from '../../model/ask.ts';
import type { ConfirmOf } from '../../model/confirm-ask.ts';
import type { Machine } from '../../model/machine.ts';
import { cautions, dropCautions } from '../cautions.ts';
import type { AskWords } from '../instruction.ts';
import { named, shortly } from '../place.ts';
import { faultWords } from '../wiring/fault-words.ts';
import { causeTitle } from './cause-words.ts';

type Confirm = ConfirmOf<CauseTopic>;
type Say = (ask: Confirm, machine: Machine) => AskWords;

const whatOf = ({ subject }: Confirm, machine: Machine): string => named(subject, machine);
const placeOf = ({ subject }: Confirm, machine: Machine): string => shortly(subject, machine);

const hand =
  (text: (what: string) => string, short: string, also: readonly string[] = []): Say =>
  (ask, machine) => ({
    text: text(whatOf(ask, machine)),
    cautions: [...cautions('motorsOff', 'fingers'), ...also],
    short: `${short}: ${placeOf(ask, machine)}`,
  });

const powered =
  (text: (what: string, axis: string) => string, short: string): Say =>
  (ask, machine) => ({
    text: text(whatOf(ask, machine), ('axis' in ask && ask.axis) || 'the axis'),
    cautions: [
      ...cautions('listens', 'lateByTwo', 'yourControl', 'stayClear', 'clothing'),
      ...dropCautions(machine),
    ],
    short,
  });

/** What is asked while a cause is sought: yes or no to the eyes, or something done while the input is watched. */
export const causeTopicWords = {
  tap: hand(
    (what) =>
      `Tap ${what} once, as briefly as you can: a twentieth of a second, not a press. Then answer yes. The input is watched meanwhile.`,
    'Tap it briefly',
  ),
  carriage: hand(
    (what) =>
      `Push the moving part slowly by hand until the machine's own dog, flag or target works ${what}, wait a second, and push it back again. Then answer yes. If it cannot be pushed by hand, answer "cannot".`,
    'Let the machine work it, by hand',
  ),
  tug: hand(
    (what) =>
      `Tug gently at each wire of ${what}, one at a time: at its clamps, along the way, at the controller. If its contact is normally open, hold it pressed meanwhile. Then answer yes.`,
    'Tug at each wire',
    cautions('signalOnly', 'mains'),
  ),
  flex: hand(
    (what) =>
      `Bend the cable of ${what} slowly to and fro along its whole length, most where it is bent every day. If its contact is normally open, hold it pressed meanwhile. Then answer yes.`,
    'Bend the cable along its length',
  ),
  lever: hand(
    (what) =>
      `Look at ${what}: is its lever, plunger or button in, although nothing stands on it? Yes or no.`,
    'Lever in with nothing on it?',
    cautions('noBridge'),
  ),
  face: hand(
    (what) =>
      `Look at the face and the blades of ${what}: is there a chip, dirt, coolant or another wet film on it? Yes or no.`,
    'Chip, dirt or coolant on it?',
  ),
  settings: (ask, machine) => ({
    text: `Look at the settings of the controller for ${whatOf(ask, machine)}: its function, active level and filter. Is any of them wrong for this switch: not enabled, the active level upside down, a filter far from a few milliseconds? Yes or no. Change nothing yet.`,
    cautions: cautions('listens'),
    short: `A setting wrong? ${placeOf(ask, machine)}`,
  }),
  blades: hand(
    (what) =>
      `Look at the blades of ${what}: are the two wires on the two outer ones, with the common one empty? Yes or no.`,
    'Common blade empty?',
    cautions('signalOnly'),
  ),
  gap: hand(
    (what) =>
      `Measure the gap between ${what} and its target where it should work: is it more than 0.8 of the distance printed on it, or the target smaller than its face? Yes or no.`,
    'Gap too large?',
  ),
  bracket: hand(
    (what) => `Push at ${what}, at its bracket and at its dog: does any of them give? Yes or no.`,
    'Does the bracket give?',
  ),
  clip: hand(
    (what) =>
      `Look at the clip and the lead of ${what}: is the clip off, on paint, or on a tool that does not conduct? Yes or no.`,
    'Clip off or on paint?',
  ),
  drives: powered(
    (what) =>
      `With every plug in and everyone clear, motor power on and nothing moving: leave everything alone for about ten seconds, then answer yes. ${capital(what)} is watched meanwhile.`,
    'Motor power on, ten seconds, no motion',
  ),
  spindle: powered(
    (what) =>
      `Without a tool in it, run the spindle by your own control for about ten seconds at its usual speed, stop it, and answer yes when it stands. ${capital(what)} is watched meanwhile.`,
    'Spindle ten seconds, no tool',
  ),
  axis: powered(
    (what, axis) =>
      `By your own control move ${axis} to and fro, 5 mm at most, with 50 mm free to both sides, for about ten seconds, your hand on the stop. Answer yes when it stands. ${capital(what)} is watched meanwhile.`,
    'Axis to and fro, 5 mm at most',
  ),
  mended: (ask: ConfirmOf<'mended'>, machine: Machine) => ({
    text: `${mendedText(ask, machine)} Is it mended now? Yes: press and plug are tested again. No: the session ends here.`,
    cautions: cautions('motorsOff', 'mains'),
    short: `Mended? ${placeOf(ask, machine)}`,
  }),
} satisfies Record<Exclude<CauseTopic, 'mended'>, Say> & {
  readonly mended: (ask: ConfirmOf<'mended'>, machine: Machine) => AskWords;
};

const capital = (what: string): string => what.charAt(0).toUpperCase() + what.slice(1);

/** Of several causes the first few are named; the ask must fit a screen. */
const titlesTold = 3;

function mendedText({ causes, subject, beside }: ConfirmOf<'mended'>, machine: Machine): string {
  const where = ` for ${named(subject, machine)}`;
  const [first] = causes;
  if (causes.length === 1 && first)
    return `Named${where}: ${causeTitle(first, beside)}. To mend it: ${first.map((each) => faultWords[each].fix).join(' ')}`;
  const titles = causes
    .slice(0, titlesTold)
    .map((each) => causeTitle(each, beside))
    .join('; ');
  const more = causes.length > titlesTold ? `; or ${causes.length - titlesTold} more` : '';
  return `One of these${where}, the likeliest first: ${titles}${more}. How to mend each stands with the cause.`;
}
