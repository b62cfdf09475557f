import type { Active, Level, Reading } from '../../model/reading.ts';
import { type Millis, ms } from '../../model/units.ts';

/** How far back the strip of edges reaches. */
export const stripSpan: Millis = ms(30_000);

/** One input as it is now, and its changes of the last while. */
export interface LiveInput {
  readonly name: string;
  readonly level: Level;
  readonly active: Active;
  /** Host clock; the first is where it was first heard of. */
  readonly changes: readonly { readonly at: Millis; readonly on: boolean | undefined }[];
}

/** The inputs as the stream reports them, in the order it declares them. */
export class LiveInputs {
  private readonly known = new Map<string, LiveInput>();
  private order: readonly string[] = [];
  private last: Millis = ms(0);

  /** Host clock of the newest reading: the right end of the strip. */
  get now(): Millis {
    return this.last;
  }

  get all(): readonly LiveInput[] {
    return this.order.flatMap((name) => this.known.get(name) ?? []);
  }

  take(reading: Reading): void {
    this.last = reading.arrived;
    if (reading.kind === 'declared') this.order = reading.inputs;
    if (reading.kind === 'gap') for (const name of this.known.keys()) this.put(name, '?', '?');
    if (reading.kind === 'edge')
      this.put(reading.input, reading.level, this.known.get(reading.input)?.active ?? '?');
    if (reading.kind !== 'status') return;
    this.order = reading.inputs;
    reading.inputs.forEach((name, i) => {
      this.put(name, reading.levels[i] ?? '?', reading.active[i] ?? '?');
    });
  }

  private put(name: string, level: Level, active: Active): void {
    const before = this.known.get(name);
    if (before?.level === level && before.active === active) return;
    const on = isOn({ level, active });
    const oldest = this.last - stripSpan;
    const kept = (before?.changes ?? []).filter((_, i, all) => (all[i + 1]?.at ?? this.last) > oldest);
    const changes = before && isOn(before) === on ? kept : [...kept, { at: this.last, on }];
    this.known.set(name, { name, level, active, changes });
  }
}

/** Active where the stream says so; where it reports levels alone, a high level. Undefined: not known. */
export const isOn = ({ level, active }: Pick<LiveInput, 'level' | 'active'>): boolean | undefined => {
  if (active !== '?') return active === '1';
  return level === '?' ? undefined : level === 'H';
};
