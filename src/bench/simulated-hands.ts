import type { Answer, Ask } from '../model/ask.ts';
import type { Subject } from '../model/machine.ts';
import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import type { Bench } from './bench.ts';
import { randomFor } from './random.ts';

export interface HandsOptions {
  readonly seed?: number;
  /** What she says instead of doing an ask; undefined: she does it. */
  readonly saysInstead?: (ask: Ask) => Answer | undefined;
  /** Asked for this plug, she pulls that one, the first time. */
  readonly pullsInstead?: Readonly<Record<Subject, Subject>>;
}

export interface SimulatedHands {
  asked(id: number, ask: Ask): void;
  /** She goes home: whatever is still in her hand is let go, nothing more is said. */
  leave(): void;
}

/** One thing done, so many ms after the one before. */
type Gesture = readonly [after: number, act: () => void];

/**
 * A person at the bench who does what she is asked, at the pace of a person, and answers what she sees. She does not see the
 * stream: where a press needs no answer she gives one all the same if nobody has asked for something else by then.
 */
export function simulatedHands(
  bench: Bench,
  time: Timekeeper,
  answer: (id: number, answer: Answer) => void,
  { seed = 1, saysInstead, pullsInstead = {} }: HandsOptions = {},
): SimulatedHands {
  const random = randomFor(seed, 'hands');
  const pulledWrong = new Map<Subject, Subject>();
  const sticking = new Set<Subject>();
  let busyUntil = 0;
  let saying: () => void = () => {};
  const acting = new Set<() => void>();

  const reaction = () => random.within(500, 1100);
  const moment = () => random.within(800, 1200);

  function gesturesOf(ask: Ask): readonly Gesture[] {
    switch (ask.action) {
      case 'press': {
        const press: Gesture = [reaction(), () => bench.press(ask.subject)];
        // When the stop itself is tried it stays in until she is asked to let it out.
        if (ask.check === 'stop') return [press];
        return [press, [moment(), () => letGo(ask.subject, ask.expect)]];
      }
      case 'release':
        if (ask.why === 'sticks') sticking.add(ask.subject);
        return [[reaction(), () => bench.release(ask.subject)]];
      case 'power':
        return [[reaction() + moment(), () => bench.power(ask.what, ask.to)]];
      case 'unplug':
        return [[reaction() + 2 * moment(), () => bench.unplug(plugFor(ask.subject), ask.at)]];
      case 'replug':
        return [[reaction() + 2 * moment(), () => bench.replug(plugBack(ask.subject), ask.at)]];
      case 'clear':
        return [[reaction(), () => bench.clear()]];
      case 'move': {
        const by = ask.direction === 'positive' ? ask.distance : -ask.distance;
        // Turned by hand: over a second and a half.
        return [
          [reaction(), () => bench.move(ask.axis, by, ask.distance / 1.5)],
          [1600, () => {}],
        ];
      }
      default:
        return [];
    }
  }

  /** While the plug is out no stream tells her that a lever stayed in; once she knows that it sticks, she frees it unasked. */
  function letGo(subject: Subject, expect: 'answer' | 'no-answer'): void {
    bench.release(subject);
    if (expect === 'no-answer' && sticking.has(subject) && bench.eyes.isIn(subject)) bench.release(subject);
  }

  function plugFor(subject: Subject): Subject {
    const wrong = pullsInstead[subject];
    if (wrong === undefined || pulledWrong.has(subject)) return subject;
    pulledWrong.set(subject, wrong);
    return wrong;
  }

  /** She puts back what she pulled. */
  function plugBack(subject: Subject): Subject {
    const wrong = pulledWrong.get(subject);
    if (wrong === undefined || wrong === subject) return subject;
    pulledWrong.set(subject, subject);
    return wrong;
  }

  function seen(ask: Ask): Answer | undefined {
    const { eyes } = bench;
    if (ask.action === 'hands-off') return undefined;
    if (ask.action === 'look') {
      if (ask.topic === 'touched') return eyes.touched(ask.subject) ? 'yes' : 'no';
      return eyes.drivesHavePower() ? 'did-not' : 'knob-free';
    }
    if (ask.action !== 'confirm') return 'done';
    if (ask.topic === 'still-out')
      return ask.subject !== undefined && eyes.isOut(ask.subject, ask.at ?? 'switch') ? 'yes' : 'no';
    if (ask.topic === 'stayed-off') return eyes.cameBackByItself() ? 'no' : 'yes';
    return 'yes';
  }

  /** What was begun is finished, even where the next ask has come by then: a pressed switch is always let go. */
  function later(at: number, act: () => void): void {
    const takeBack = time.after(ms(at - time.now()), () => {
      acting.delete(takeBack);
      act();
    });
    acting.add(takeBack);
  }

  return {
    asked(id, ask) {
      saying();
      const instead = saysInstead?.(ask);
      let at = Math.max(time.now(), busyUntil);
      if (instead === undefined)
        for (const [after, act] of gesturesOf(ask)) {
          at += after;
          later(at, act);
        }
      busyUntil = at;
      saying = time.after(ms(at + moment() - time.now()), () => {
        const said = instead ?? seen(ask);
        if (said !== undefined) answer(id, said);
      });
    },
    leave() {
      saying();
      for (const takeBack of acting) takeBack();
      acting.clear();
      for (const subject of bench.eyes.switches) if (bench.eyes.inHand(subject)) bench.release(subject);
    },
  };
}
