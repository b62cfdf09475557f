import { ToolError } from '../../model/tool-error.ts';
import { worn } from '../bounce.ts';
import type { ContactKind, Setting } from '../truth.ts';
import { type Fault, onSwitch } from './fault.ts';

const otherKind = (kind: ContactKind): ContactKind =>
  kind === 'normally closed' ? 'normally open' : 'normally closed';
const fits = (kind: ContactKind): Setting =>
  kind === 'normally closed' ? 'active when open' : 'active when closed';

/** What can be wrong with a switch itself. */
export const contactFaults = {
  'normally-open': onSwitch(
    'the switch makes contact only when pressed, and the setting was made to fit: it works until its wire breaks',
    (_, { contact, stage }) => {
      contact.kind = 'normally open';
      stage.setting = fits('normally open');
      contact.rebuild();
    },
  ),
  'wrong-contact-declared': onSwitch(
    'wired to the other pair of its blades than the file and the setting say',
    (_, { contact }) => {
      contact.kind = otherKind(contact.kind);
      contact.rebuild();
    },
  ),
  welded: onSwitch('the blades are burnt together: they conduct whether pressed or not', (_, { contact }) => {
    contact.blades = 'welded';
    contact.rebuild();
  }),
  'never-makes': onSwitch(
    'the blades no longer meet: they never conduct, pressed or not',
    (_, { contact }) => {
      contact.blades = 'never meet';
      contact.rebuild();
    },
  ),
  'bent-lever': onSwitch('the lever is bent and holds the switch operated', (_, { contact }) => {
    contact.push('bent lever');
    contact.rebuild();
  }),
  sticks: onSwitch(
    'let go, the lever stays in; taken hold of and let go once more, it comes out',
    (_, { contact }) => {
      contact.sticks = true;
    },
  ),
  slips: onSwitch('every second push slips off the lever before the blades move', (_, { contact }) => {
    contact.slips = true;
  }),
  chatters: onSwitch('worn blades: they bounce for a tenth of a second at each change', (_, { contact }) => {
    contact.habit = worn;
  }),
  'held-at-rest': onSwitch('the axis stands on the switch', (world, { contact }) => {
    const { subject } = contact.truth;
    const dog = world.dogs.find((each) => each.contact === contact);
    const axis = world.axes.find(({ letter }) => letter === contact.truth.dog?.axis);
    if (!dog || !axis)
      throw new ToolError(
        'wrong-usage',
        `No axis works the switch ${subject}.`,
        'Name a switch at the end of an axis.',
      );
    axis.moveTo(dog.actuates);
    contact.rebuild();
  }),
} satisfies Record<string, Fault>;
