import type { Answer, Ask } from '../model/ask.ts';
import type { MeterDeed } from '../model/deed-names.ts';
import type { Bench } from './bench.ts';

/** One thing done, so many ms after the one before. */
type Gesture = readonly [after: number, act: () => void];

interface Said {
  readonly answer: Answer;
  readonly value?: number;
}

/** A tap is as brief as a hand can make it, ms. */
const tapLasts = 50;
const moment = 1000;

/** A person who helps to find what is wrong: pushes, tugs, looks closely and puts a meter where she is asked to. */
export class TroubleHands {
  private readonly bench: Bench;
  private read: Said | undefined;

  constructor(bench: Bench) {
    this.bench = bench;
  }

  /** What she does for an ask of this kind; undefined where it is none. */
  gestures(ask: Ask): readonly Gesture[] | undefined {
    this.read = undefined;
    const { bench } = this;
    const subject = 'subject' in ask ? ask.subject : undefined;
    if (subject === undefined) return undefined;
    const pressed = (lasts: number): readonly Gesture[] => [
      [moment, () => bench.press(subject)],
      [lasts, () => bench.release(subject)],
      [moment, () => {}],
    ];
    if (ask.action === 'measure')
      return ask.quantity === 'distance' ? undefined : this.measuring(subject, ask.where);
    if (ask.action !== 'confirm') return undefined;
    switch (ask.topic) {
      case 'tap':
        return pressed(tapLasts);
      case 'carriage':
        return [
          [moment, () => this.push(subject)],
          [moment, () => bench.closeUp.pushBack(subject)],
          [moment, () => {}],
        ];
      case 'tug':
      case 'flex':
        return bench.closeUp.isNormallyOpen(subject) ? pressed(5 * moment) : [[5 * moment, () => {}]];
      case 'drives':
      case 'spindle':
      case 'axis':
        return [[10 * moment, () => {}]];
      default:
        return undefined;
    }
  }

  /** What she says; undefined where it is no ask of this kind. */
  said(ask: Ask): Said | undefined {
    const { closeUp } = this.bench;
    if (ask.action === 'measure') return ask.quantity === 'distance' ? undefined : this.read;
    if (ask.action !== 'confirm' || !('subject' in ask) || ask.subject === undefined) return undefined;
    const yes = (is: boolean): Said => ({ answer: is ? 'yes' : 'no' });
    switch (ask.topic) {
      case 'lever':
        return yes(closeUp.isHeldByItself(ask.subject));
      case 'settings':
        return yes(closeUp.hasWrongSetting(ask.subject));
      case 'face':
      case 'blades':
      case 'gap':
      case 'bracket':
      case 'clip':
      // The simulated hands mend nothing.
      case 'mended':
        return yes(false);
      case 'carriage':
        return this.read ?? yes(true);
      default:
        return undefined;
    }
  }

  private push(subject: string): void {
    if (!this.bench.closeUp.pushOn(subject)) this.read = { answer: 'cannot' };
  }

  /** Worked so that its contact should be closed, or open, as the place says. */
  private measuring(subject: string, where: MeterDeed): readonly Gesture[] {
    const { bench } = this;
    const wantsClosed = where.endsWith('-closed');
    const wantsOpen = where.endsWith('-open');
    const presses = bench.closeUp.isNormallyOpen(subject) ? wantsClosed : wantsOpen;
    const read = () => {
      const shown = bench.closeUp.metered(subject, where);
      this.read =
        shown === undefined
          ? { answer: 'over-range' }
          : typeof shown === 'number'
            ? { answer: 'value', value: shown }
            : { answer: 'cannot' };
    };
    if (!presses) return [[5 * moment, read]];
    return [
      [moment, () => bench.press(subject)],
      [5 * moment, read],
      [moment, () => bench.release(subject)],
    ];
  }
}
