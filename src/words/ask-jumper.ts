import type { JumperAsk } from '../model/ask.ts';
import type { Machine } from '../model/machine.ts';
import { visible } from '../model/visible.ts';
import { cautions } from './cautions.ts';
import type { AskWords } from './instruction.ts';
import { named, shortly } from './place.ts';

/** A link between two named terminals takes the place of the switch; it must come out again, and the register says so until it has. */
export function jumperWords(ask: JumperAsk, machine: Machine): AskWords {
  const what = named(ask.subject, machine);
  const [one, other] = ask.terminals.map(visible);
  const where = ask.at === 'switch' ? 'at the switch end' : 'at the controller';
  return ask.action === 'jumper'
    ? {
        text: `With the plug of ${what} out, join ${one} and ${other} ${where} with a short piece of wire. These two and no others. Then say that you did it.`,
        cautions: cautions('motorsOff', 'signalOnly', 'twoTerminals', 'licensed'),
        short: `Join ${one} and ${other}`,
      }
    : {
        text: `Take the piece of wire between ${one} and ${other} ${where} out again (${what}). Then say that you did it.`,
        cautions: cautions('motorsOff', 'linkOut'),
        short: `Take the link out: ${shortly(ask.subject, machine)}`,
      };
}
