import { type Ask, type AskAction, type CauseTopic, lengthPlaces } from '../../src/model/ask.ts';
import { deedNames, isMeterDeed } from '../../src/model/deed-names.ts';
import { mm, ms, seconds } from '../../src/model/units.ts';

const x = { subject: 'x-home' } as const;
const plug = { ...x, at: 'switch', conductor: 'signal plug' } as const;
const press = { action: 'press', ...x, round: 1, rounds: 3, expect: 'answer', deaf: [] } as const;

/** Every action with every turn it can take. */
export const actions: readonly AskAction[] = [
  { action: 'hands-off' },
  press,
  { ...press, round: 2 },
  { ...press, rounds: 1, expect: 'no-answer' },
  { ...press, deaf: ['door', 'plate'] },
  ...(['held', 'sticks', 'latched'] as const).map(
    (why) => ({ action: 'release', ...x, watch: ['x-home'], why }) as const,
  ),
  ...(['motors', 'controller'] as const).flatMap((what) =>
    (['off', 'on'] as const).map((to) => ({ action: 'power', what, to }) as const),
  ),
  { action: 'unplug', ...plug },
  { action: 'unplug', ...plug, at: 'controller' },
  { action: 'unplug', ...plug, again: true },
  { action: 'unplug', ...plug, conductor: 'whole sensor plug' },
  { action: 'replug', ...plug },
  ...(['wrong-plug', 'still-out', 'stream-says-out'] as const).map(
    (why) => ({ action: 'replug', ...plug, why }) as const,
  ),
  { action: 'clear', ...x },
  { action: 'clear' },
  ...(['jumper', 'unjumper'] as const).map(
    (action) => ({ action, ...x, at: 'switch', terminals: ['IN1', 'COM'] }) as const,
  ),
  { action: 'seek', axis: 'X' },
  { action: 'seek', axis: 'X', late: { after: ms(66), by: mm(0.9) } },
  { action: 'home', axis: 'X' },
  { action: 'home', axis: 'X', late: { after: ms(66) } },
  { action: 'confirm', topic: 'hard-wired-stop' },
  { action: 'confirm', topic: 'way-free', axis: 'X' },
  { action: 'home', axis: 'all' },
  { action: 'move', axis: 'X', direction: 'negative', distance: 5, unit: 'mm' },
  ...(['touched', 'power', 'lamp'] as const).map((topic) => ({ action: 'look', topic, ...x }) as const),
  ...(['direction', 'reached', 'buzzed', 'came-back', 'past-switch', 'moved-other', 'racked'] as const).map(
    (topic) => ({ action: 'look', topic, axis: 'X' }) as const,
  ),
  ...lengthPlaces.map(
    (where) =>
      ({ action: 'measure', quantity: 'distance', unit: 'mm', where, axis: 'X', system: 'G54' }) as const,
  ),
  { action: 'confirm', topic: 'long-way-free', axis: 'X', shows: ['220 mm'] },
  { action: 'confirm', topic: 'has-gauge', axis: 'X' },
  {
    action: 'confirm',
    topic: 'still-out',
    ...x,
    at: 'controller',
    linked: ['IN1', 'COM'],
  },
  { action: 'confirm', topic: 'propped', axes: ['Z'] },
  ...deedNames.filter(isMeterDeed).map((where) => {
    const [kind] = where.split('-');
    if (kind === 'ohms')
      return { action: 'measure', quantity: 'resistance', unit: 'ohm', where, ...x } as const;
    return kind === 'volts'
      ? ({ action: 'measure', quantity: 'voltage', unit: 'V', where, ...x } as const)
      : ({ action: 'measure', quantity: 'current', unit: 'mA', where, ...x } as const);
  }),
  ...(
    [
      ...['tap', 'carriage', 'tug', 'flex', 'lever', 'face', 'settings', 'blades', 'gap', 'bracket', 'clip'],
      ...['drives', 'spindle', 'axis'],
    ] as readonly Exclude<CauseTopic, 'mended'>[]
  ).map((topic) => ({ action: 'confirm', topic, ...x, axis: 'X' }) as const),
  { action: 'confirm', topic: 'mended', ...x, causes: [['signal-core-open']] },
  { action: 'confirm', topic: 'mended', ...x, causes: [['wrong-blade', 'polarity-inverted'], []] },
  ...(['signal-plug', 'still-out', 'stop-area-clear', 'stayed-off'] as const).map(
    (topic) => ({ action: 'confirm', topic, ...x, at: 'controller' }) as const,
  ),
];

export const asked = (action: AskAction, check: Ask['check'] = 'press'): Ask =>
  ({ check, seconds: seconds(20), ...action }) as Ask;
