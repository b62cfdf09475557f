/** Short forms of the trade and what the file spells in full. */
const words: Readonly<Record<string, string>> = {
  nc: 'normally closed',
  no: 'normally open',
  min: 'negative',
  minus: 'negative',
  '-': 'negative',
  max: 'positive',
  plus: 'positive',
  '+': 'positive',
  inches: 'inch',
  in: 'inch',
  millimetres: 'mm',
  millimeters: 'mm',
};

export const meantWord = (written: string): string | undefined => own(words, written.trim().toLowerCase());

/** Units as they are written out or shortened elsewhere. */
const units: Readonly<Record<string, string>> = {
  volt: 'V',
  volts: 'V',
  vdc: 'V',
  'v dc': 'V',
  millivolts: 'mV',
  ohms: 'ohm',
  k: 'kohm',
  'k ohm': 'kohm',
  kiloohm: 'kohm',
  kiloohms: 'kohm',
  'mm/sec': 'mm/s',
  'mm/minute': 'mm/min',
  'mm per minute': 'mm/min',
  'mm per second': 'mm/s',
  'mm/s/s': 'mm/s2',
  'mm/sec2': 'mm/s2',
  sec: 's',
  second: 's',
  seconds: 's',
  msec: 'ms',
  milliseconds: 'ms',
  millimetres: 'mm',
  millimeters: 'mm',
  inches: 'in',
  amps: 'A',
  milliamps: 'mA',
};

/** "24 V" for "24 volts" or "24v", where the field takes that unit. */
export function meantQuantity(written: string, allowed: readonly string[]): string | undefined {
  const [, figure = '', unit = ''] = /^\s*([-+]?\d+(?:\.\d+)?)\s*(\D{1,20}?)\.?\s*$/.exec(written) ?? [];
  if (allowed.includes(unit)) return undefined;
  const plain = unit.toLowerCase();
  const meant = own(units, plain) ?? allowed.find((each) => each.toLowerCase() === plain);
  return meant !== undefined && allowed.includes(meant) ? `${figure} ${meant}` : undefined;
}

/** What people call an entry, and what the file calls it, or the two that it tells apart. */
const keys: Readonly<Record<string, string>> = {
  volts: 'voltage',
  volt: 'voltage',
  v: 'voltage',
  pin: 'terminal',
  plug: 'connector',
  location: 'place',
  position: 'place',
  where: 'place',
  type: 'contact or sensor',
  normally: 'contact',
  function: 'duty',
  use: 'duty',
  purpose: 'duty',
  length: 'travel',
  'home direction': 'homes',
  'home end': 'homes',
};

export function meantKey(written: string, allowed: readonly string[]): string | undefined {
  const meant = own(keys, written.trim().toLowerCase());
  return meant?.split(' or ').every((each) => allowed.includes(each)) ? meant : undefined;
}

const own = (table: Readonly<Record<string, string>>, word: string): string | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;

const sides = ['left', 'right', 'front', 'back', 'top', 'bottom'];

/** Whether a side that a person sees stands where an end of an axis belongs. */
export const isSideForEnd = (written: string, allowed: readonly string[]): boolean =>
  allowed.includes('negative') && sides.includes(written.trim().toLowerCase());
