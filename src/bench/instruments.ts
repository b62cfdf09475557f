import type { Eyes } from './eyes.ts';
import type { Random } from './random.ts';

/** How far the plunger of a dial gauge goes, mm, and what one mark of its dial is. */
const gaugeTravel = 10;
const gaugeMark = 0.01;
/** What a calliper shows, and how far off two readings of one person may be, mm (common practice, no source). */
const calliperMark = 0.05;
const calliperDoubt = 0.04;

/** A dial gauge standing on the bed, its tip against one axis's carriage: it reads where that really is. */
export class DialGauge {
  private readonly eyes: Eyes;
  private readonly letter: string;
  private zeroAt: number;

  constructor(eyes: Eyes, letter: string) {
    this.eyes = eyes;
    this.letter = letter;
    this.zeroAt = eyes.position(letter);
  }

  /** Turns its scale to 0 where the carriage stands. */
  zero(): void {
    this.zeroAt = this.eyes.position(this.letter);
  }

  /** mm from its zero, to its mark; undefined where its plunger does not reach. */
  get reading(): number | undefined {
    const from = this.eyes.position(this.letter) - this.zeroAt;
    return Math.abs(from) > gaugeTravel / 2 ? undefined : toMark(from, gaugeMark);
  }
}

/** What a calliper or a rule shows of the way an axis made since its eyes began to watch, mm without sign. */
export const calliperReading = (eyes: Eyes, letter: string, random: Random): number =>
  toMark(Math.abs(eyes.wayMade(letter)) + random.within(-calliperDoubt, calliperDoubt), calliperMark);

const toMark = (length: number, mark: number): number =>
  Number((Math.round(length / mark) * mark).toFixed(3));
