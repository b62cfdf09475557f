import type { Told } from '../../model/cause-facts.ts';
import { type Glimpse, type Held, jumps } from '../../model/outcomes.ts';
import type { Setting } from '../circuit/rig.ts';
import type { KnownContact } from '../circuit/template.ts';
import type { Seen } from '../fault-finding/reading-of.ts';
import { mixed, type Odds, sure } from './odds.ts';

/** `conducting 1`, `open 0`; only the half that the stream tells. */
export function glimpseOf(conducting: boolean, active: boolean, told: Told): Held {
  const level = conducting ? 'conducting' : 'open';
  const bit = active ? '1' : '0';
  return told === 'both' ? `${level} ${bit}` : told === 'levels' ? level : bit;
}

/** A level between the thresholds is read either way by one unit and another, and now and then jumps. */
const between = { conducting: 0.45, open: 0.45, jumps: 0.1 } as const;
/** An input that nothing holds picks up whatever is near. */
const floating = { conducting: 0.15, open: 0.25, jumps: 0.6 } as const;
/** What comes and goes may happen to stand while it is looked at. */
const coming = { conducting: 0.08, open: 0.08, jumps: 0.84 } as const;

/** What is likely to be heard of an input that reads so. */
export function oddsOf(
  { level }: Pick<Seen, 'level'>,
  setting: Pick<Setting, 'enabled' | 'inverted'>,
  contact: KnownContact,
  told: Told,
): Odds<Glimpse> {
  const glimpse = (conducting: boolean, trips = false): Odds<Glimpse> => {
    const active = trips || (conducting === (contact === 'normally open')) !== setting.inverted;
    return sure(glimpseOf(conducting, setting.enabled && active, told));
  };
  const spread = (share: typeof between | typeof floating | typeof coming): Odds<Glimpse> =>
    mixed<Glimpse>([
      [share.conducting, glimpse(true)],
      [share.open, glimpse(false)],
      [share.jumps, sure(jumps)],
    ]);
  switch (level) {
    case 'conducting':
    case 'open':
      return glimpse(level === 'conducting');
    // A window input reports a short and a cut as a trip, whatever its setting.
    case 'shorted':
    case 'cut':
      return glimpse(level === 'shorted', true);
    case 'uncertain':
      return spread(between);
    case 'floats':
      return spread(floating);
    case 'flickers':
      return spread(coming);
  }
}
