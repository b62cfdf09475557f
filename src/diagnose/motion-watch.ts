import type { Reading, StatusReading } from '../model/reading.ts';
import { type Millis, ms } from '../model/units.ts';
import { standsFor, standsForUntold } from './limits.ts';

/** Sees that something moved and that it has come to stand. Commanded motion: what the metal did is another question. */
export class MotionWatch {
  private before: StatusReading | undefined;
  private hasMoved = false;
  private movedAt: Millis = ms(-Infinity);
  private heardAt: Millis = ms(-Infinity);

  constructor(lead: StatusReading | undefined) {
    this.before = lead;
  }

  feed(reading: Reading): void {
    if (reading.kind !== 'status') return;
    const { before } = this;
    const isBusy = reading.activity === 'moving' || reading.activity === 'homing';
    const isElsewhere = reading.positions.some((each, at) => before && each !== before.positions[at]);
    if (isBusy || isElsewhere) {
      this.hasMoved = true;
      this.movedAt = reading.arrived;
    }
    this.heardAt = reading.arrived;
    this.before = reading;
  }

  /** By the reports alone: a stream that fell silent has shown no end. */
  seen(): boolean {
    const needed = this.before?.activity === '?' ? standsForUntold : standsFor;
    return this.hasMoved && this.heardAt - this.movedAt >= needed;
  }

  watchedEnough(): boolean {
    return !this.hasMoved || this.seen();
  }
}
