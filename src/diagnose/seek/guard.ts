import type { AxisLetter } from '../../model/machine.ts';
import type { Danger, DangerKind, Guard } from '../../model/procedure.ts';
import type { Reading } from '../../model/reading.ts';
import type { SeekAlarm } from './alarm.ts';
import type { SeekExpectation } from './expectation.ts';
import { SeekWatch } from './watch.ts';

/** What a person is told of each alarm. */
export const dangerOf = {
  'heads-away': 'heads-away',
  'heads-for-work': 'heads-for-work',
  'wrong-switch': 'wrong-switch',
  'pushes-on': 'overruns',
  'stays-operated': 'does-not-clear',
} as const satisfies Record<SeekAlarm['kind'], DangerKind>;

/** Watches one axis, or all that home together, while the ask is open, and keeps what it said for the judge. */
export class SeekGuard implements Guard {
  private readonly watches: readonly { readonly axis: AxisLetter; readonly watch: SeekWatch }[];
  private readonly raised: { readonly axis: AxisLetter; readonly alarm: SeekAlarm }[] = [];

  constructor(axes: readonly { readonly axis: AxisLetter; readonly expectation: SeekExpectation }[]) {
    this.watches = axes.map(({ axis, expectation }) => ({ axis, watch: new SeekWatch(expectation) }));
  }

  feed(reading: Reading): readonly Danger[] {
    const dangers: Danger[] = [];
    for (const { axis, watch } of this.watches)
      for (const alarm of watch.feed(reading)) {
        this.raised.push({ axis, alarm });
        dangers.push({ axis, finding: dangerOf[alarm.kind] });
      }
    return dangers;
  }

  get hasAlarmed(): boolean {
    return this.raised.length > 0;
  }

  alarmsOf(axis: AxisLetter): readonly SeekAlarm[] {
    return this.raised.filter((each) => each.axis === axis).map(({ alarm }) => alarm);
  }
}
