import type { PlugEnd } from './ask.ts';
import type { LimitFinding, ScaleFinding } from './limits-finding.ts';
import type { Contact, InputName, Subject } from './machine.ts';
import type { MotionFinding } from './motion-finding.ts';

export { type MotionFact, type MotionKind, motionKinds } from './motion-finding.ts';

/** A finding is facts; its words and weight live in one exhaustive catalogue each. */
export type Finding =
  | LimitFinding
  | ScaleFinding
  | MotionFinding
  /** No stop input is in the file: that something stops the machine is only told. */
  | { readonly kind: 'stop-told' }
  | {
      readonly kind: 'break-undetected';
      readonly input: InputName /** Inputs that one shared polarity setting would turn wrong. */;
      readonly breaks: readonly InputName[];
    }
  | { readonly kind: 'polarity-reversed'; readonly input: InputName }
  | { readonly kind: 'polarity-shared'; readonly input: InputName; readonly breaks: readonly InputName[] }
  | { readonly kind: 'polarity-unknown'; readonly input: InputName }
  | { readonly kind: 'never-changes'; readonly input: InputName }
  | { readonly kind: 'stuck-active'; readonly input: InputName }
  | { readonly kind: 'already-open'; readonly input: InputName }
  /** `edges`: how often it was seen to change; absent where an earlier listening had found it out. */
  | { readonly kind: 'flickers'; readonly input: InputName; readonly edges?: number }
  | { readonly kind: 'answers-elsewhere'; readonly input: InputName; readonly answeredBy: InputName }
  | { readonly kind: 'shifted-plug'; readonly connector: string; readonly by: number }
  | { readonly kind: 'moves-together'; readonly input: InputName; readonly with: readonly InputName[] }
  | { readonly kind: 'chain-blocked'; readonly input: InputName; readonly others: readonly Subject[] }
  | { readonly kind: 'chatters'; readonly input: InputName; readonly edges: number }
  | {
      readonly kind: 'misses-presses';
      readonly input: InputName;
      readonly answered: number;
      readonly asked: number;
    }
  | {
      readonly kind: 'another-answered';
      readonly input: InputName;
      readonly answeredBy: readonly InputName[];
      /** Presses that went to another input alone. */
      readonly elsewhere: number;
      readonly answered: number;
      readonly asked: number;
    }
  | { readonly kind: 'sticks'; readonly input: InputName }
  | { readonly kind: 'slow-answer'; readonly input: InputName }
  | { readonly kind: 'floats-open'; readonly input: InputName; readonly edges: number }
  | { readonly kind: 'declared-otherwise'; readonly declared: Contact; readonly found: Contact }
  | { readonly kind: 'not-enabled'; readonly input: InputName }
  | { readonly kind: 'wrong-plug'; readonly input: InputName }
  | {
      readonly kind: 'still-out';
      readonly what: readonly { readonly subject: Subject; readonly at: PlugEnd }[];
    }
  | { readonly kind: 'power-stays-on' }
  | { readonly kind: 'status-not-following'; readonly input: InputName }
  | { readonly kind: 'does-not-latch' }
  | { readonly kind: 'restarts' }
  | {
      readonly kind: 'false-trips';
      readonly input: InputName;
      readonly trips: number;
      /** 95 % interval of their rate, an hour; absent where nothing was watched long enough to tell. */
      readonly low?: number;
      readonly high?: number;
    }
  | { readonly kind: 'controller-restarted'; readonly times: number }
  | { readonly kind: 'conflicting-answers'; readonly inputs: readonly InputName[] }
  | { readonly kind: 'input-not-in-stream'; readonly input: InputName }
  | {
      readonly kind: 'side-clash';
      readonly axis: string;
      readonly side: string;
      readonly end: string;
      readonly positive: string;
    }
  | {
      readonly kind: 'stream-gaps';
      readonly gaps: number;
      readonly lost: number;
      readonly unreadable: number;
    };

export type FindingKind = Finding['kind'];

/** A fault fails its verdict, a limitation limits it, a note changes nothing. */
export type Weight = 'fault' | 'limitation' | 'note';

export const weightOf = {
  'break-undetected': 'limitation',
  'polarity-reversed': 'fault',
  'polarity-shared': 'limitation',
  'polarity-unknown': 'limitation',
  'never-changes': 'fault',
  'stuck-active': 'fault',
  'already-open': 'fault',
  flickers: 'fault',
  'answers-elsewhere': 'fault',
  'shifted-plug': 'fault',
  'moves-together': 'fault',
  'chain-blocked': 'limitation',
  chatters: 'limitation',
  'misses-presses': 'fault',
  'another-answered': 'limitation',
  sticks: 'fault',
  'slow-answer': 'limitation',
  'floats-open': 'fault',
  'declared-otherwise': 'note',
  'not-enabled': 'fault',
  'wrong-plug': 'limitation',
  'still-out': 'limitation',
  'power-stays-on': 'fault',
  'status-not-following': 'fault',
  'does-not-latch': 'fault',
  restarts: 'fault',
  'false-trips': 'fault',
  'controller-restarted': 'note',
  'conflicting-answers': 'limitation',
  'input-not-in-stream': 'limitation',
  'side-clash': 'note',
  'heads-away': 'fault',
  'heads-for-work': 'fault',
  mirrored: 'fault',
  turned: 'limitation',
  'wrong-switch': 'fault',
  'pressed-at-start': 'fault',
  'zeroed-in-place': 'fault',
  'zero-not-set': 'fault',
  'no-reversal': 'fault',
  'does-not-clear': 'fault',
  'no-trip': 'fault',
  'inferred-trip': 'limitation',
  overruns: 'fault',
  'reference-lost': 'limitation',
  'not-acted-on': 'fault',
  'axis-order': 'fault',
  crawls: 'limitation',
  'blocked-elsewhere': 'fault',
  gantry: 'fault',
  'ends-in-fault': 'fault',
  'slow-not-slower': 'limitation',
  'turns-one-way': 'fault',
  'other-axis-moves': 'fault',
  'scattered-trips': 'fault',
  'stop-told': 'limitation',
  'soft-limits-outside': 'limitation',
  'soft-limits-mistyped': 'fault',
  'little-room-to-stop': 'limitation',
  'switch-behind-stop': 'fault',
  'back-off-unfit': 'limitation',
  'home-outside-soft': 'note',
  'zero-not-at-home': 'limitation',
  'outside-soft-limits': 'fault',
  'work-offset-doubtful': 'limitation',
  'scale-off': 'fault',
  backlash: 'limitation',
  'ways-differ': 'limitation',
  'stream-gaps': 'note',
} satisfies Record<FindingKind, Weight>;

export const findingKinds = Object.keys(weightOf) as readonly FindingKind[];
