import { type Millis, ms } from '../model/units.ts';

/** How long nothing may be heard, or nothing that is a report, before the person is told; and, where no report ever came, before the session ends. */
const toldAfter = ms(5000);
const unreadAfter = ms(10_000);
const endsAfter = ms(60_000);

export type Silent = 'nothing-heard' | 'nothing-understood';

/** Knows what has not been heard for too long. Lines without a report are no stream: waiting for them has an end too. */
export class Silence {
  private readonly since: Millis;
  private heardAt: Millis;
  private reported = false;
  /** The last line that came, as it came. */
  private line = '';
  private readonly told = new Set<Silent>();

  constructor(now: Millis) {
    this.since = now;
    this.heardAt = now;
  }

  heard(now: Millis, isReport: boolean, line = ''): void {
    if (line.trim() !== '') this.line = line;
    this.heardAt = now;
    this.reported ||= isReport;
    this.told.delete('nothing-heard');
  }

  get example(): string {
    return this.line;
  }

  /** No report ever came, and none is waited for any longer. */
  isOver(now: Millis): boolean {
    return !this.reported && now - this.since > endsAfter;
  }

  /** What is to be told now, each once until it changes. */
  news(now: Millis): Silent | undefined {
    const is: Silent | undefined =
      now - this.heardAt > toldAfter
        ? 'nothing-heard'
        : !this.reported && now - this.since > unreadAfter
          ? 'nothing-understood'
          : undefined;
    if (is === undefined || this.told.has(is)) return undefined;
    this.told.add(is);
    return is;
  }
}
