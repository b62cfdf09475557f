import { type DeedName, isMeterDeed } from '../../model/deed-names.ts';

/** "conducting 0", "open", "1": the half the stream tells, or both. */
function glimpse(seen: string): string {
  if (seen === 'jumps') return 'jumping to and fro';
  const level = /conducting|open/.exec(seen)?.[0];
  const bit = /[01]$/.exec(seen)?.[0];
  const active = bit === undefined ? undefined : bit === '1' ? 'active' : 'inactive';
  const line = level === undefined ? undefined : level === 'open' ? 'line open' : 'line conducting';
  return [active, line].filter((each) => each !== undefined).join(', ') || seen;
}

function pushed(own: string): string {
  if (own === 'still') return 'no answer';
  if (own === 'jumps') return 'it jumped to and fro';
  const [state = '', how] = own.replace(/^to /, '').split(', ');
  const after = how === 'stays' ? ', and stayed so' : how === 'bounces' ? ', with bounce' : '';
  return `answered: ${glimpse(state)}${after}`;
}

const beside = {
  another: '; another input answered',
  'other end': '; the input of the other end of the axis answered',
};

const neighbours: Readonly<Record<string, string>> = {
  own: 'its own input answered',
  'this one': 'this input answered in its place',
  both: 'its own input and this one answered',
  third: 'a third input answered',
  none: 'nothing answered',
  jumps: 'this input jumped to and fro',
};

/** What a yes and a no of a look say, without the question. */
const seenBy: Partial<Record<DeedName, { readonly yes: string; readonly no: string }>> = {
  lever: { yes: 'yes, it is in', no: 'no, it is out' },
  face: { yes: 'yes, there is something on it', no: 'no, it is clean' },
  settings: { yes: 'yes, one of them is wrong', no: 'no, none of them is wrong' },
  blades: { yes: 'yes, on the two outer ones, the common one empty', no: 'no, the common one is used' },
  gap: { yes: 'yes, too large, or the target too small', no: 'no, near enough and large enough' },
  bracket: { yes: 'yes, something gives', no: 'no, all sits tight' },
  clip: { yes: 'yes, off, on paint, or on what does not conduct', no: 'no, it sits on bare metal' },
};

/** What a deed came to, as the end of a sentence; `supply` and figures are not needed for it. */
export function outcomeText(deed: DeedName, outcome: string): string {
  if (outcome === 'unforeseen') return 'something else than any of the causes thought of would show';
  if (isMeterDeed(deed)) return meterOutcome(deed, Number(outcome.replace('bin ', '')));
  if (outcome === 'yes' || outcome === 'no') return seenBy[deed]?.[outcome] ?? outcome;
  if (outcome === 'on' || outcome === 'off') return outcome === 'on' ? 'lit' : 'not lit';
  if (deed === 'neighbour') return neighbours[outcome] ?? outcome;
  if (deed === 'press' || deed === 'tap' || deed === 'carriage') {
    const [own = '', other] = outcome.split('; ');
    return `${pushed(own)}${other === undefined ? '' : beside[other as keyof typeof beside]}`;
  }
  const [out = '', linked] = outcome.split(', linked ');
  return linked === undefined ? glimpse(out) : `out: ${glimpse(out)}; joined: ${glimpse(linked)}`;
}

/** Where a reading falls among the figures that tell the causes apart. */
function meterOutcome(deed: string, at: number): string {
  if (deed === 'ohms-pull')
    return ['under 10 ohm', '10 ohm to 25 kohm', '25 kohm to 1 Mohm', 'over 1 Mohm'][at] ?? `${at}`;
  if (deed.startsWith('ohms')) return ['under 10 ohm', '10 ohm to 1 Mohm', 'over 1 Mohm'][at] ?? `${at}`;
  if (deed === 'amps-closed')
    return ['under 0.2 mA', '0.2 to 2 mA', '2 to 20 mA', 'over 20 mA'][at] ?? `${at}`;
  if (deed === 'amps-open') return ['under 0.2 mA', '0.2 to 1 mA', '1 to 2 mA', 'over 2 mA'][at] ?? `${at}`;
  if (deed === 'volts-sensor-supply')
    return (
      [
        'below zero: turned round',
        'next to nothing',
        'under 0.6 of the supply',
        'about the supply',
        'far above the supply',
      ][at] ?? `${at}`
    );
  return (
    [
      'below zero',
      'under 0.15 of the supply',
      '0.15 to 0.5 of the supply',
      '0.5 to 0.85 of the supply',
      'about the supply or more',
    ][at] ?? `${at}`
  );
}
