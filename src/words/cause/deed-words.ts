import { type DeedName, isMeterDeed } from '../../model/deed-names.ts';
import { type Caution, caution } from '../cautions.ts';
import { meterPlaces } from './ask-meter.ts';

interface DeedWords {
  readonly title: string;
  readonly tools: string;
  readonly cautions: readonly Caution[];
}

const hands: readonly Caution[] = ['motorsOff', 'fingers'];
const plug: readonly Caution[] = ['motorsOff', 'signalOnly', 'mains'];
const link: readonly Caution[] = [...plug, 'twoTerminals', 'linkOut'];
const power: readonly Caution[] = ['listens', 'stayClear', 'lateByTwo', 'yourControl'];

const by = (title: string, cautions: readonly Caution[], tools = 'none'): DeedWords => ({
  title,
  tools,
  cautions,
});

const words = {
  rest: by('Hands off: what does it read by itself', ['listens']),
  press: by('Press it by hand', hands),
  tap: by('Tap it as briefly as possible', hands),
  carriage: by('Let the machine’s own dog work it, pushed by hand', hands),
  neighbour: by('Press the switch beside it', hands),
  tug: by('Tug at each of its wires', [...hands, 'signalOnly']),
  flex: by('Bend its cable along the whole length', hands),
  'unplug-controller': by('Pull its plug at the controller', plug),
  'unplug-switch': by('Pull its plug at the switch', plug),
  'link-controller': by(
    'Plug out at the controller, its two terminals there joined',
    link,
    'a piece of wire',
  ),
  'link-switch': by('Plug out at the switch, its two cores there joined', link, 'a piece of wire'),
  lamp: by('Is the sensor’s own lamp lit', hands, 'a piece of steel, or what works it'),
  lever: by('Look whether its lever is in', hands),
  face: by('Look for chips, dirt or coolant on it', hands),
  settings: by('Look at the controller’s settings for it', ['listens']),
  blades: by('Look which blades its wires are on', hands),
  gap: by('Measure the gap to its target', hands, 'a feeler gauge'),
  bracket: by('Push at its bracket and its dog', hands),
  clip: by('Look at its clip and lead', hands),
  drives: by('Motor power on, nothing moving', power),
  spindle: by('Run the spindle without a tool', power),
  axis: by('Move the axis to and fro, 5 mm at most', power),
} satisfies Partial<Record<DeedName, DeedWords>>;

/** What is done, with what, and what to mind. */
export function deedWords(deed: DeedName): Omit<DeedWords, 'cautions'> & { cautions: readonly string[] } {
  const told = isMeterDeed(deed)
    ? by(`Measure ${deed.split('-')[0]} ${meterPlaces[deed][0]}`, ['meter', ...plug], 'a meter')
    : words[deed as keyof typeof words];
  return { ...told, cautions: told.cautions.map((each) => caution[each]) };
}
