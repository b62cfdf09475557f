/** Bounds that something may not pass: twice in a row and still going, for a number that was set once does not go on. */
export class Bounds {
  private readonly past = new Map<string, number>();

  /** `step`: what counts as going on. */
  passes(what: string, way: number, bound: number, step: number): boolean {
    const before = this.past.get(what);
    if (way > bound) this.past.set(what, way);
    else this.past.delete(what);
    return way > bound && before !== undefined && way >= before + step * 0.9;
  }

  forget(): void {
    this.past.clear();
  }
}

/** When the last reports were taken. */
export class ReportTimes {
  private readonly times: number[] = [];

  take(at: number): void {
    this.times.push(at);
    if (this.times.length > kept) this.times.shift();
  }

  /** ms that the last so many of them span. */
  spanOf(reports: number): number {
    const last = this.times.at(-1) ?? 0;
    return last - (this.times.at(-reports) ?? this.times[0] ?? last);
  }
}

const kept = 32;
