import type { FaultName } from '../../model/fault-names.ts';
import { alike } from './alike.ts';
import { type Belief, normalised, posterior } from './belief.ts';
import { type Choice, nextTest, weightsOf } from './chooser.ts';
import { type Kind, kinds } from './deed.ts';
import type { DeedName } from './deeds/all.ts';
import { namesOf } from './hypotheses.ts';
import { type Prospect, type Trial, unforeseen } from './prospect.ts';

/** How sure one cause must be before it is named (judgement: one wrong in fifty at most, and each further test costs minutes). */
export const sureEnough = 0.98;

export interface Finding {
  readonly deed: DeedName;
  readonly outcome: string;
}

/** What it came to. */
export interface Conclusion {
  /** Causes that no deed left could tell apart, the likeliest first; one of several faults at once has several names. */
  readonly causes: readonly (readonly FaultName[])[];
  /** How much of the belief they hold together, 0 to 1. */
  readonly share: number;
}

/** One search for a cause: what is believed, what was learnt, what is left to do. Pure: every step gives a new one. */
export class Inquiry {
  readonly prospect: Prospect;
  readonly belief: Belief;
  readonly findings: readonly Finding[];
  /** Deeds that may still be asked for. */
  readonly left: readonly Trial[];

  private constructor(
    prospect: Prospect,
    belief: Belief,
    findings: readonly Finding[],
    left: readonly Trial[],
  ) {
    this.prospect = prospect;
    this.belief = belief;
    this.findings = findings;
    this.left = left;
  }

  static begin(prospect: Prospect, allows: (trial: Trial) => boolean = () => true): Inquiry {
    const belief = normalised(prospect.hypotheses.map(({ weight }) => weight));
    return new Inquiry(prospect, belief, [], prospect.trials.filter(allows));
  }

  /** What was seen counts, and its deed is not asked for again. */
  learnt(deed: DeedName, outcome: string): Inquiry {
    const trial = this.prospect.trials.find(({ name }) => name === deed);
    if (!trial) return this;
    const at = trial.keys.indexOf(outcome);
    const column = at < 0 ? trial.keys.indexOf(unforeseen) : at;
    const belief = posterior(this.belief, trial.chances, column) ?? this.belief;
    return new Inquiry(this.prospect, belief, [...this.findings, { deed, outcome }], this.without(deed));
  }

  /** Not possible here, skipped, or nobody is sure: it is not asked for again. A missing meter takes all its deeds with it. */
  ruledOut(deed: DeedName, alsoKind?: Kind): Inquiry {
    const left = this.without(deed).filter(({ kind }) => kind !== alsoKind);
    return new Inquiry(this.prospect, this.belief, this.findings, left);
  }

  /** The next deed, or undefined where the cause is sure enough or nothing left tells more. Safer kinds go first. */
  next(): Choice<Trial> | undefined {
    if (this.isSure()) return undefined;
    const classOf = this.classOf();
    for (const kind of kinds) {
      const choice = nextTest(
        this.belief,
        this.left.filter((trial) => trial.kind === kind),
        { classOf, sure: sureEnough },
      );
      if (choice) return choice;
    }
    return undefined;
  }

  /** One cause, or several that nothing left tells apart, is sure enough to be named. */
  isSure(): boolean {
    return Math.max(...weightsOf(this.belief, this.classOf())) >= sureEnough;
  }

  conclusion(): Conclusion {
    const classOf = this.classOf();
    const weights = weightsOf(this.belief, classOf);
    const ranked = [...weights.keys()].sort((a, b) => (weights[b] ?? 0) - (weights[a] ?? 0));
    const taken: number[] = [];
    let share = 0;
    for (const group of ranked) {
      if (share >= sureEnough) break;
      taken.push(group);
      share += weights[group] ?? 0;
    }
    const members = [...this.belief.keys()]
      .filter((at) => taken.includes(classOf[at] ?? -1))
      .sort((a, b) => (this.belief[b] ?? 0) - (this.belief[a] ?? 0));
    const most = this.belief[members[0] ?? 0] ?? 0;
    const causes = new Map(
      members
        .filter((at) => (this.belief[at] ?? 0) >= negligible * most)
        .map((at) => namesOf(this.prospect.hypotheses[at] ?? { faults: [], weight: 0 }))
        .map((names) => [names.join(), names]),
    );
    return { causes: [...causes.values()], share };
  }

  private without(deed: DeedName): readonly Trial[] {
    return this.left.filter(({ name }) => name !== deed);
  }

  private classOf(): readonly number[] {
    return alike(this.prospect.hypotheses, this.left);
  }
}

/** A cause this much less likely than the first is not named beside it. */
const negligible = 0.01;
