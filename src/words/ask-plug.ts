import type { Ask } from '../model/ask.ts';
import type { Machine } from '../model/machine.ts';
import { cautions } from './cautions.ts';
import { listed } from './figures.ts';
import type { AskWords } from './instruction.ts';
import { named, sharesConnector, shortly, terminalOf } from './place.ts';

type Plug = Extract<Ask, { readonly action: 'unplug' | 'replug' }>;

/** "at the switch", or "at the controller (terminal IN1, connector J4)". */
function whereOf(ask: Plug, machine: Machine): string {
  if (ask.at === 'switch') return 'at the switch';
  const terminal = terminalOf(ask.subject, machine);
  return terminal === '' ? 'at the controller' : `at the controller (${terminal})`;
}

export const plugWords = (ask: Plug, machine: Machine): AskWords =>
  ask.action === 'unplug' ? unplugWords(ask, machine) : replugWords(ask, machine);

function unplugWords(ask: Extract<Plug, { readonly action: 'unplug' }>, machine: Machine): AskWords {
  const neighbours = ask.at === 'controller' ? sharesConnector(ask.subject, machine) : [];
  const also =
    neighbours.length === 0
      ? ''
      : ` ${listed(neighbours)} sit${neighbours.length === 1 ? 's' : ''} on the same connector and may drop with it: that is expected.`;
  const which =
    ask.conductor === 'whole sensor plug'
      ? 'the whole plug, with all its cores at once,'
      : 'only the signal plug';
  const again = ask.again
    ? 'The last plug was another one: its switch still answered. Look for the right one. '
    : '';
  return {
    text: `${again}Pull ${which} of ${named(ask.subject, machine)} ${whereOf(ask, machine)} and leave it out, its end touching nothing. Say when it is out. No plug to pull: "cannot".${also}`,
    cautions: [
      ...cautions('signalOnly', 'photograph', 'motorsOff'),
      ...(ask.conductor === 'whole sensor plug' ? cautions('allCores') : []),
      ...(ask.at === 'controller' ? cautions('charge', 'mains') : []),
      ...cautions('wet'),
    ],
    short: `Unplug at the ${ask.at}: ${shortly(ask.subject, machine)}`,
  };
}

const whyBack = {
  'wrong-plug': 'The switch answered although its plug was said to be out, so another plug is out. ',
  'still-out': 'As far as this tool knows, this plug is still out. ',
  'stream-says-out': 'The stream still reads as if this plug were out. ',
} satisfies Record<NonNullable<Extract<Plug, { readonly action: 'replug' }>['why']>, string>;

function replugWords(ask: Extract<Plug, { readonly action: 'replug' }>, machine: Machine): AskWords {
  const why = ask.why === undefined ? '' : whyBack[ask.why];
  const what = named(ask.subject, machine);
  const where = whereOf(ask, machine);
  const text =
    ask.why === 'wrong-plug'
      ? `Put back the plug you pulled for ${what} ${where}. Say when it is in and latched.`
      : `Put the ${ask.conductor === 'whole sensor plug' ? 'whole sensor plug' : 'signal plug'} of ${what} back in ${where}. Say when it is in and latched.`;
  return {
    text: `${why}${text}`,
    cautions: cautions('signalOnly', 'motorsOff'),
    short: `Plug back in at the ${ask.at}: ${shortly(ask.subject, machine)}`,
  };
}
