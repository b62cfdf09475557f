import type { Answer, Ask } from '../model/ask.ts';
import type { Subject } from '../model/machine.ts';
import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import type { Bench } from './bench.ts';
import { isRefused } from './hand-refused.ts';
import { motionSeen } from './motion-seen.ts';
import { OwnControl } from './own-control.ts';
import { randomFor } from './random.ts';
import { TroubleHands } from './trouble-hands.ts';

export interface HandsOptions {
  readonly seed?: number;
  /** She does not hear a warning, or does not act on it. */
  readonly ignoresDanger?: boolean;
  /** What she says instead of doing an ask; undefined: she does it. */
  readonly saysInstead?: (ask: Ask) => Answer | undefined;
  /** Asked for this plug, she pulls that one, the first time. */
  readonly pullsInstead?: Readonly<Record<Subject, Subject>>;
}

export interface SimulatedHands {
  asked(id: number, ask: Ask): void;
  /** She is told that something goes wrong while an axis moves: she hits the stop, as fast as a person does. */
  danger(): void;
  /** She goes home: whatever is still in her hand is let go, nothing more is said. */
  leave(): void;
}

/** How long a person with her hand on the stop takes from a warning to the blow, ms (no source: half a second is usual). */
const hitsWithin: readonly [number, number] = [350, 700];
/** How often she looks whether it still moves, ms. */
const glancesEvery = 250;

/** One thing done, so many ms after the one before. */
type Gesture = readonly [after: number, act: () => void];

/**
 * A person at the bench who does what she is asked, at the pace of a person, and answers what she sees. She does not see the
 * stream: where a press needs no answer she gives one all the same if nobody has asked for something else by then.
 */
export function simulatedHands(
  bench: Bench,
  time: Timekeeper,
  answer: (id: number, answer: Answer, value?: number) => void,
  { seed = 1, ignoresDanger = false, saysInstead, pullsInstead = {} }: HandsOptions = {},
): SimulatedHands {
  const random = randomFor(seed, 'hands');
  const control = new OwnControl(bench, randomFor(seed, 'instruments'));
  const trouble = new TroubleHands(bench);
  const pulledWrong = new Map<Subject, Subject>();
  const sticking = new Set<Subject>();
  let busyUntil = 0;
  let saying: () => void = () => {};
  const acting = new Set<() => void>();

  const reaction = () => random.within(500, 1100);
  const moment = () => random.within(800, 1200);

  function gesturesOf(ask: Ask): readonly Gesture[] {
    const own = trouble.gestures(ask);
    if (own) return own;
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
        return [[reaction() + moment(), () => control.power(ask.what, ask.to)]];
      case 'unplug':
        return [[reaction() + 2 * moment(), () => bench.unplug(plugFor(ask.subject), ask.at)]];
      case 'replug':
        return [[reaction() + 2 * moment(), () => bench.replug(plugBack(ask.subject), ask.at)]];
      case 'jumper':
      case 'unjumper':
        return [
          [reaction() + 2 * moment(), () => bench.setJumper(ask.subject, ask.at, ask.action === 'jumper')],
        ];
      case 'clear':
        return [[reaction(), () => bench.clear()]];
      case 'seek':
      case 'home':
      case 'move':
        return [[reaction(), () => control.start(ask)]];
      default:
        return [];
    }
  }

  /** While the plug is out no stream tells her that a lever stayed in; once she knows that it sticks, she frees it unasked. */
  function letGo(subject: Subject, expect: 'answer' | 'no-answer'): void {
    bench.release(subject);
    if (expect === 'no-answer' && sticking.has(subject) && bench.eyes.isIn(subject)) bench.release(subject);
  }

  const movesOn = ({ action }: Ask) =>
    (action === 'seek' || action === 'home' || action === 'move') && bench.eyes.isMoving();

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
      if (!('subject' in ask)) return motionSeen(eyes, ask.topic, ask.axis);
      if (ask.topic === 'touched') return eyes.touched(ask.subject) ? 'yes' : 'no';
      if (ask.topic === 'lamp') return eyes.lampIsOn(ask.subject) ? 'on' : 'off';
      return eyes.drivesHavePower() ? 'did-not' : 'knob-free';
    }
    if (ask.action === 'measure') return 'cannot';
    if (ask.action !== 'confirm') return 'done';
    if (ask.topic === 'still-out') return eyes.isOut(ask.subject, ask.at) ? 'yes' : 'no';
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
      // A switch that only the machine file knows cannot be found on this machine.
      let unable = false;
      if (instead === undefined)
        for (const [after, act] of gesturesOf(ask)) {
          at += after;
          later(at, () => {
            unable ||= isRefused(act);
          });
        }
      busyUntil = at;
      const say = () => {
        // What moves is watched to its end before anything is said of it.
        if (movesOn(ask)) {
          saying = time.after(ms(glancesEvery), say);
          return;
        }
        if (unable) {
          answer(id, 'cannot');
          return;
        }
        const told = instead === undefined ? trouble.said(ask) : undefined;
        const value =
          told?.value ??
          (ask.action === 'measure' && instead === undefined ? control.measured(ask) : undefined);
        const said = instead ?? told?.answer ?? (value === undefined ? seen(ask) : 'value');
        if (said !== undefined) answer(id, said, value);
      };
      saying = time.after(ms(at + moment() - time.now()), say);
    },
    danger() {
      if (!ignoresDanger) later(time.now() + random.within(...hitsWithin), () => control.hitStop());
    },
    leave() {
      saying();
      for (const takeBack of acting) takeBack();
      acting.clear();
      for (const subject of bench.eyes.switches) if (bench.eyes.inHand(subject)) bench.release(subject);
    },
  };
}
