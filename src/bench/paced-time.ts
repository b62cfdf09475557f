import type { Timekeeper } from '../model/source.ts';
import { type Millis, ms } from '../model/units.ts';
import { virtualTime } from './virtual-time.ts';

/** A computer that was away for longer took the simulated machine with it: nobody wants an hour made up for at once. */
const madeUpFor = ms(1000);

/**
 * Real time for a simulated world: what is due is called in its order and at its own moment, however late the computer is. A machine does not
 * overrun its switch because another program was busy.
 */
export function pacedTime(real: Timekeeper): Timekeeper {
  const own = virtualTime(real.now());
  /** How far this clock is behind for good. */
  let away = 0;
  let isRunning = false;
  let wake: { readonly at: Millis; readonly takeBack: () => void } | undefined;

  const catchUp = () => {
    if (isRunning) return;
    isRunning = true;
    try {
      const behind = real.now() - away - own.now();
      if (behind > madeUpFor) away += behind - madeUpFor;
      own.runTo(ms(real.now() - away));
    } finally {
      isRunning = false;
    }
  };

  const sleep = () => {
    const { next } = own;
    if (isRunning || next === wake?.at) return;
    wake?.takeBack();
    wake = undefined;
    if (next === undefined) return;
    const takeBack = real.after(ms(Math.max(0, next + away - real.now())), () => {
      wake = undefined;
      catchUp();
      sleep();
    });
    wake = { at: next, takeBack };
  };

  return {
    now() {
      catchUp();
      sleep();
      return own.now();
    },
    after(delay, then) {
      catchUp();
      const takeBack = own.after(delay, then);
      sleep();
      return () => {
        takeBack();
        sleep();
      };
    },
  };
}
