import type { MeasureAsk } from '../../../model/ask.ts';
import type { MeterDeed } from '../../../model/deed-names.ts';
import type { Bin } from '../../../model/outcomes.ts';
import { timeToPlug } from '../../limits.ts';
import { type Asking, refusal } from '../../procedures/asking.ts';
import { untilUnbroken } from '../../procedures/motors-off.ts';
import { bin, type Probe } from '../../troubleshooting/probe.ts';
import type { Doing, Done, Site } from '../site.ts';
import { whileOut } from './plugs.ts';

const check = 'troubleshoot' as const;

const asked = {
  resistance: { quantity: 'resistance', unit: 'ohm', scale: 1 },
  voltage: { quantity: 'voltage', unit: 'V', scale: 1 },
  current: { quantity: 'current', unit: 'mA', scale: 1e-3 },
} as const satisfies Record<Probe['quantity'], Pick<MeasureAsk, 'quantity' | 'unit'> & { scale: number }>;

/** A figure read off a meter, told by the bin it falls in. A plug that is in the way is pulled first and put back. */
export const metered =
  (where: MeterDeed, probe: Probe): Doing<Bin> =>
  (site) => {
    const { undone } = probe;
    if (undone.length === 0) return read(where, probe, site);
    const at = undone.includes('controller') ? 'controller' : 'switch';
    return whileOut(at, site, () => read(where, probe, site));
  };

function* read(where: MeterDeed, probe: Probe, { of, latest, wiring }: Site): Asking<Done<Bin>> {
  const { scale, ...shown } = asked[probe.quantity];
  const ask = { check, action: 'measure', ...shown, where, subject: of.subject } as const;
  const ended = yield* untilUnbroken({ ...ask, seconds: timeToPlug }, latest);
  if (ended.answer === 'over-range') return { outcome: bin(Number.POSITIVE_INFINITY, probe.limits) };
  if (ended.answer !== 'value') {
    const missing = refusal(ended) ?? 'not-sure';
    // Who has no meter is not asked for another figure.
    return missing === 'cannot' ? { missing, kind: 'meter' } : { missing };
  }
  const value = ended.value * scale;
  const compared =
    probe.quantity === 'voltage' ? value / (wiring.values.supply?.nominal ?? Number.NaN) : value;
  const isLength = probe.quantity === 'resistance' || probe.quantity === 'current';
  return { outcome: bin(isLength ? Math.abs(compared) : compared, probe.limits), value };
}
