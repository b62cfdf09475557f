import type { Finding, FindingKind } from '../../model/finding.ts';
import type { ActiveWhen, Machine, Subject } from '../../model/machine.ts';

export type Of<Kind extends FindingKind> = Extract<Finding, { readonly kind: Kind }>;

/** What the words of a finding may look at beside its own facts. */
export interface FindingScene {
  readonly machine: Machine;
  readonly subject: Subject;
  /** All kinds found on this subject by all checks: what one change cures need not be cured twice. */
  readonly together: readonly FindingKind[];
}

/** One change for the person to make; the tool makes none. */
export interface Change {
  /** `cause`: it has to be found first, or a search has found it. */
  readonly what: 'setting' | 'wire' | 'mechanics' | 'cause';
  readonly from: string;
  readonly to: string;
  readonly why: string;
  /** What has to be tested again once it is made. */
  readonly retest: string;
}

/** Everything that is ever said about a kind of finding. Generic but for `said` and `change`, which speak of the case at hand. */
export interface FindingEntry<Kind extends FindingKind> {
  readonly title: string;
  readonly said: (finding: Of<Kind>, scene: FindingScene) => string;
  /** Two to four sentences at trade level. */
  readonly means: string;
  /** Likeliest or cheapest first. */
  readonly next: readonly string[];
  readonly change: (finding: Of<Kind>, scene: FindingScene) => readonly Change[];
}

export const noChange = (): readonly Change[] => [];

export const opposite = {
  'active when open': 'active when closed',
  'active when closed': 'active when open',
  unknown: 'the opposite of what it is now',
} satisfies Record<ActiveWhen, string>;

/** The re-test of one subject, or of every input where one setting serves them all. */
export function retestOf(scene: FindingScene, what: 'setting' | 'wire' | 'mechanics'): string {
  const all = what === 'setting' && scene.machine.polarity !== 'each';
  return all
    ? 'rest, press and open wire of every input'
    : `rest, press and open wire of ${scene.subject === 'stream' ? 'every input' : scene.subject}`;
}
