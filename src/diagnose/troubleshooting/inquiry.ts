import type { FaultName } from '../../model/fault-names.ts';
import type { Outcome } from '../../model/outcomes.ts';
import { again, believedAfter, isDoubtful } from './again.ts';
import { type Belief, normalised } from './belief.ts';
import { type Choice, nextTest, usefulTests } from './chooser.ts';
import { type Kind, kinds } from './deed.ts';
import type { DeedName } from './deeds/all.ts';
import { aimOf, namesOf } from './hypotheses.ts';
import { Looks } from './looks.ts';
import type { Prospect, Trial } from './prospect.ts';

/** How sure one cause must be before it is named (judgement: one wrong in fifty at most, and each further test costs minutes). */
export const sureEnough = 0.98;

export interface Finding {
  readonly deed: DeedName;
  readonly outcome: Outcome;
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
  /** Deeds that may still be asked for; among them, once more, those whose answer is hard to believe. */
  readonly left: readonly Trial[];
  /** Those never asked for so far. */
  private readonly fresh: readonly Trial[];
  private readonly out: readonly DeedName[];

  private constructor(
    prospect: Prospect,
    belief: Belief,
    findings: readonly Finding[],
    fresh: readonly Trial[],
    out: readonly DeedName[],
  ) {
    this.prospect = prospect;
    this.belief = belief;
    this.findings = findings;
    this.fresh = fresh;
    this.out = out;
    this.left = [...fresh, ...this.doubtful()];
  }

  static begin(prospect: Prospect, allows: (trial: Trial) => boolean = () => true): Inquiry {
    const belief = normalised(prospect.hypotheses.map(({ weight }) => weight));
    const forbidden = prospect.trials.filter((trial) => !allows(trial)).map(({ name }) => name);
    return new Inquiry(prospect, belief, [], prospect.trials.filter(allows), forbidden);
  }

  /** What was seen counts, and its deed is not asked for again unless it is hard to believe; a second answer tells what it adds to the first. */
  learnt(deed: DeedName, outcome: Outcome): Inquiry {
    const trial = this.prospect.trials.find(({ name }) => name === deed);
    if (!trial) return this;
    const [first, ...more] = this.outcomesOf(deed);
    const now = first === undefined ? trial : again(trial, [first, ...more]);
    const belief = believedAfter(this.belief, now, outcome);
    const findings = [...this.findings, { deed, outcome }];
    return new Inquiry(this.prospect, belief, findings, this.without(deed), this.out);
  }

  /** Not possible here, skipped, or nobody is sure: it is not asked for again. A missing meter takes all its deeds with it. */
  ruledOut(deed: DeedName, alsoKind?: Kind): Inquiry {
    const out = this.prospect.trials.filter(({ name, kind }) => name === deed || kind === alsoKind);
    const fresh = this.without(deed).filter(({ kind }) => kind !== alsoKind);
    return new Inquiry(this.prospect, this.belief, this.findings, fresh, [
      ...this.out,
      ...out.map(({ name }) => name),
    ]);
  }

  /** The next deed, or undefined where the cause is sure enough or nothing left tells more. Safer kinds go first. */
  next(): Choice<Trial> | undefined {
    return nextTest(this.belief, this.tiers(), this.aims());
  }

  /** What may be asked for now. */
  useful(): readonly Trial[] {
    return usefulTests(this.belief, this.tiers(), this.aims());
  }

  /** One cause, or several that nothing left tells apart, is sure enough to be named. */
  isSure(): boolean {
    return Math.max(...this.groups().map(({ share }) => share)) >= sureEnough;
  }

  conclusion(): Conclusion {
    const taken: number[] = [];
    let share = 0;
    for (const group of this.groups()) {
      if (share >= sureEnough) break;
      taken.push(...group.members);
      share += group.share;
    }
    const members = taken.sort((a, b) => (this.belief[b] ?? 0) - (this.belief[a] ?? 0));
    const most = this.belief[members[0] ?? 0] ?? 0;
    const left = members
      .filter((at) => (this.belief[at] ?? 0) >= negligible * most)
      .map((at) => this.prospect.hypotheses[at] ?? { faults: [], weight: 0 });
    const alone = new Set(left.filter(({ faults }) => faults.length === 1).map(aimOf));
    const causes = new Map(
      left
        // What is mended first anyhow needs no second fault named beside it.
        .filter((each) => each.faults.length < 2 || !alone.has(aimOf(each)))
        .map(namesOf)
        .map((names) => [names.join(), names]),
    );
    return { causes: [...causes.values()], share };
  }

  /** Hypotheses that nothing left tells apart, with how likely they are together, the likeliest first. */
  private groups(): readonly { readonly members: readonly number[]; readonly share: number }[] {
    const { names } = this.aims();
    const at = Int32Array.from(this.belief.keys()).filter((each) => (this.belief[each] ?? 0) > unlikely);
    const { of, count } = new Looks(names, this.left).classes(at);
    const groups = Array.from({ length: count }, () => ({ members: [] as number[], share: 0 }));
    for (const [place, each] of at.entries()) {
      const group = groups[of[place] ?? 0];
      group?.members.push(each);
      if (group) group.share += this.belief[each] ?? 0;
    }
    return groups.sort((a, b) => b.share - a.share);
  }

  private tiers(): readonly (readonly Trial[])[] {
    return kinds.map((kind) => this.left.filter((trial) => trial.kind === kind));
  }

  private aims(): { readonly names: readonly string[]; readonly sure: number } {
    const names = this.prospect.hypotheses.map(aimOf);
    return { names, sure: sureEnough };
  }

  private doubtful(): readonly Trial[] {
    return this.prospect.trials.flatMap((trial) => {
      const [outcome, ...more] = this.outcomesOf(trial.name);
      if (outcome === undefined || more.length > 0 || this.out.includes(trial.name)) return [];
      return isDoubtful(trial, outcome, this.belief) ? [again(trial, [outcome])] : [];
    });
  }

  private outcomesOf(deed: DeedName): readonly Outcome[] {
    return this.findings.flatMap((each) => (each.deed === deed ? [each.outcome] : []));
  }

  private without(deed: DeedName): readonly Trial[] {
    return this.fresh.filter(({ name }) => name !== deed);
  }
}

/** Hypotheses less likely than this are told apart from nothing. */
const unlikely = 1e-6;
/** A cause this much less likely than the first is not named beside it. */
const negligible = 0.01;
