/** A line of the operator protocol, as a program outside the project reads it. */
export interface Event {
  readonly kind: string;
  readonly id?: number;
  readonly action?: string;
  readonly topic?: string;
  readonly input?: string;
  readonly switch?: string;
  readonly at?: string;
  readonly what?: string;
  readonly to?: string;
  readonly axis?: string;
  readonly direction?: string;
  readonly distance?: number;
  readonly finding?: string;
  readonly check?: string;
  readonly subject?: string;
  readonly status?: string;
  readonly evidence?: string;
  readonly findings?: readonly { readonly kind: string }[];
  readonly restored?: boolean;
  readonly again?: number;
  readonly exit?: number;
  readonly session?: string;
  readonly report?: string;
  readonly answers?: readonly string[];
}

export interface PersonOptions {
  /** Overrides the answer to an ask; the hand does nothing then. */
  readonly says?: (ask: Event) => string | undefined;
  /** Asks that she lets stand: somebody else sees to them. */
  readonly leaves?: (ask: Event) => boolean;
  /** From a warning to her hand on the stop, ms. */
  readonly hitsAfter?: number;
}

/**
 * A willing person in real time, written against the published protocols alone: reads asks, moves the bench's hands, answers. She
 * outlives the session she works with, as a person does when the laptop dies.
 */
export class Person {
  readonly out = new Map<string, string>();
  private readonly hands: (hand: object) => void;
  private readonly options: PersonOptions;
  private say: (answer: object) => void = () => {};
  private timers: NodeJS.Timeout[] = [];
  private open: number | undefined;

  constructor(hands: (hand: object) => void, options: PersonOptions = {}) {
    this.hands = hands;
    this.options = options;
  }

  /** Begins to listen to a session; what she was about to do for another is forgotten, what she holds is let go. */
  attend(say: (answer: object) => void): void {
    this.forget();
    this.say = say;
  }

  forget(): void {
    for (const timer of this.timers) clearTimeout(timer);
    this.timers = [];
    this.say = () => {};
    if (this.pressing) this.hands({ do: 'release', switch: this.pressing });
    this.pressing = undefined;
  }

  private pressing: string | undefined;
  /** Of the last move she made. */
  private way = 'none';

  take(event: Event): void {
    // Her hand is on the stop while anything moves.
    if (event.kind === 'danger')
      this.later(this.options.hitsAfter ?? 400, () => this.hands({ do: 'press', switch: 'stop' }));
    if (event.kind === 'ended' && event.id === this.open) this.open = undefined;
    if (event.kind !== 'ask' || event.id === undefined) return;
    this.open = event.id;
    if (this.options.leaves?.(event)) return;
    const { id } = event;
    const subject = event.switch ? `${event.input}/${event.switch}` : (event.input ?? '');
    const own = this.options.says?.(event);
    if (own !== undefined) this.later(80, () => this.answer(id, own));
    else this.act(event, id, subject);
  }

  private act(event: Event, id: number, subject: string): void {
    switch (event.action) {
      case 'hands-off':
        return;
      case 'press':
        this.later(120, () => {
          this.pressing = subject;
          this.hands({ do: 'press', switch: subject });
        });
        this.later(520, () => {
          this.pressing = undefined;
          this.hands({ do: 'release', switch: subject });
        });
        this.later(1000, () => this.answer(id, 'done'));
        return;
      case 'release':
        this.hands({ do: 'release', switch: subject });
        this.later(500, () => this.answer(id, 'done'));
        return;
      case 'unplug':
        this.hands({ do: 'unplug', switch: subject, at: event.at });
        this.out.set(subject, event.at ?? 'switch');
        this.later(150, () => this.answer(id, 'done'));
        return;
      case 'replug':
        this.hands({ do: 'replug', switch: subject, at: event.at });
        this.out.delete(subject);
        this.later(150, () => this.answer(id, 'done'));
        return;
      case 'clear':
        this.hands({ do: 'clear' });
        this.later(150, () => this.answer(id, 'done'));
        return;
      case 'power':
        if (event.to === 'on') this.hands({ do: 'release', switch: 'stop' });
        this.hands({ do: 'power', what: event.what, to: event.to });
        this.later(80, () => this.answer(id, 'done'));
        return;
      case 'seek':
      case 'home':
        this.hands({ do: event.action, axis: event.axis });
        return;
      case 'move':
        this.way = event.direction ?? 'none';
        this.hands({ do: 'move', axis: event.axis, direction: event.direction, distance: event.distance });
        return;
      case 'look':
        this.later(80, () => this.answer(id, this.seen(event.topic)));
        return;
      default:
        this.later(80, () =>
          this.answer(id, event.topic === 'still-out' && !this.out.has(subject) ? 'no' : 'yes'),
        );
    }
  }

  /** On a sound machine the tool goes the way that was commanded, and an axis comes to its switch and back. */
  private seen(topic: string | undefined): string {
    if (topic === 'power') return 'knob-free';
    if (topic === 'direction') return this.way;
    return topic === 'reached' || topic === 'came-back' ? 'yes' : 'no';
  }

  private answer(id: number, answer: string): void {
    if (this.open === id) this.say({ id, answer });
  }

  private later(delay: number, then: () => void): void {
    this.timers.push(setTimeout(then, delay));
  }
}
