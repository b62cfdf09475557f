import type { Timekeeper } from '../model/source.ts';
import { ms } from '../model/units.ts';
import { type BounceHabit, bounces, sound } from './bounce.ts';
import type { Random } from './random.ts';
import type { ContactKind, SwitchTruth } from './truth.ts';

/** What may hold a switch operated. */
export type Push = 'hand' | 'dog' | 'bent lever' | 'stuck lever';

/** One mechanical switch: what pushes on it, and whether its contact conducts at this moment. */
export class Contact {
  readonly truth: SwitchTruth;
  /** The input whose line it is on. */
  readonly input: string;
  kind: ContactKind;
  habit: BounceHabit = sound;
  /** The blades no longer part, or no longer meet, whatever the lever does. */
  blades: 'free' | 'welded' | 'never meet' = 'free';
  /** Let go, the lever stays in until it is taken hold of once more. */
  sticks = false;
  /** Every second push of a hand slips off before the blades move. */
  slips = false;
  /** Blades without a snap action: worked more slowly than this they flutter for as long as they are held, mm/s. */
  fluttersBelow = 0;
  private readonly pushes = new Set<Push>();
  private readonly time: Timekeeper;
  private readonly random: Random;
  private readonly changed: () => void;
  private closed: boolean;
  private settling: (() => void)[] = [];
  private handPushes = 0;

  constructor(truth: SwitchTruth, time: Timekeeper, random: Random, changed: () => void) {
    this.truth = truth;
    this.input = truth.subject.split('/')[0] ?? '';
    this.kind = truth.contact;
    this.time = time;
    this.random = random;
    this.changed = changed;
    this.closed = this.target;
  }

  get conducts(): boolean {
    return this.closed;
  }

  /** Something that can be seen to stand on it: a hand, or the machine. A bent lever is not seen. */
  get touched(): boolean {
    return this.pushes.has('hand') || this.pushes.has('dog');
  }

  get inHand(): boolean {
    return this.pushes.has('hand');
  }

  get operated(): boolean {
    const byHand = this.pushes.has('hand') && !(this.slips && this.handPushes % 2 === 0);
    return byHand || [...this.pushes].some((push) => push !== 'hand');
  }

  /** `speed` mm/s, of what pushes. */
  push(by: Push, speed = Number.POSITIVE_INFINITY): void {
    if (this.pushes.has(by)) return;
    if (by === 'hand') this.handPushes++;
    this.pushes.add(by);
    if (speed > 0 && speed < this.fluttersBelow) this.flutter();
    else this.follow();
  }

  /** A hand that lets go of a sticking lever leaves it in; one that takes hold of it again frees it. */
  letGo(by: Push): void {
    if (by === 'hand') {
      const wasIn = this.operated;
      const wasStuck = this.pushes.delete('stuck lever');
      const held = this.pushes.delete('hand');
      if (held && this.sticks && wasIn && !wasStuck) this.pushes.add('stuck lever');
    } else this.pushes.delete(by);
    this.follow();
  }

  /** Takes on another build at once, without bounce: for faults planted while it stands. */
  rebuild(): void {
    this.calm();
    this.closed = this.target;
    this.changed();
  }

  private get target(): boolean {
    if (this.blades !== 'free') return this.blades === 'welded';
    return (this.kind === 'normally closed') !== this.operated;
  }

  /** Neither open nor closed for longer than any filter waits. */
  private flutter(): void {
    this.calm();
    this.set(!this.closed);
    this.settling = [this.time.after(ms(this.random.within(0.4, 2)), () => this.flutter())];
  }

  private follow(): void {
    const { target } = this;
    if (target === this.closed && this.settling.length === 0) return;
    this.calm();
    this.set(target);
    let done = 0;
    this.settling = bounces(this.habit, this.random).map((at, turn) =>
      this.time.after(ms(at), () => {
        // Real timers may come late and out of order: a turn that was overtaken is left out.
        if (turn < done) return;
        done = turn + 1;
        this.set(turn % 2 === 0 ? !target : target);
        if (done === this.settling.length) this.settling = [];
      }),
    );
  }

  private calm(): void {
    for (const takeBack of this.settling) takeBack();
    this.settling = [];
  }

  private set(closed: boolean): void {
    if (this.closed === closed) return;
    this.closed = closed;
    this.changed();
  }
}
