import type { FindingKind } from '../../src/model/finding.ts';
import type { CheckName, Status } from '../../src/model/verdict.ts';

export type Told = readonly [Status, ...FindingKind[]];
/** What a check says that it would not say of a sound machine, subject by subject. */
export type Saying = Readonly<Record<string, Told>>;

export interface PlantedFault {
  /** As `--fault` spells it. */
  readonly plant: string;
  /** What the wire, the contact or the controller then does: reasoned from there, never read off the program. */
  readonly because: string;
  /** Every check that is not named here says what it says of a sound machine. */
  readonly tells: Readonly<Partial<Record<CheckName, Saying>>>;
}

export const neverChanges: Told = ['failed', 'never-changes'];
export const stuckActive: Told = ['failed', 'stuck-active'];
export const openAlready: Told = ['failed', 'stuck-active', 'already-open'];
export const elsewhere: Told = ['failed', 'answers-elsewhere'];
export const reversed: Told = ['failed', 'polarity-reversed'];
export const notEnabled: Told = ['failed', 'not-enabled'];
export const flickers: Told = ['failed', 'flickers'];
export const silent: Told = ['inconclusive', 'never-changes'];
export const notInStream: Told = ['inconclusive', 'input-not-in-stream'];
