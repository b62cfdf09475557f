import type { DeedName } from '../../model/deed-names.ts';
import type { FaultName } from '../../model/fault-names.ts';
import type { Outcome } from '../../model/outcomes.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Belief } from '../troubleshooting/belief.ts';
import type { Kind } from '../troubleshooting/deed.ts';
import { type Conclusion, Inquiry } from '../troubleshooting/inquiry.ts';
import type { Prospect, Trial } from '../troubleshooting/prospect.ts';
import { together } from './prospects.ts';

type RuledOut = readonly [deed: DeedName, kind: Kind | undefined];

/** From this share on one of several wirings thought of is gone on with alone. */
const likelyEnough = 0.8;

/** The search over one wiring or several: several are thought of at once until one of them is likely enough to go on with. */
export class Search {
  private readonly prospects: readonly [Prospect, ...Prospect[]];
  private readonly inquiry: Inquiry;
  private readonly allows: (trial: Trial) => boolean;
  private readonly ruled: readonly RuledOut[];
  private readonly isNarrowed: boolean;

  private constructor(
    prospects: readonly [Prospect, ...Prospect[]],
    inquiry: Inquiry,
    allows: (trial: Trial) => boolean,
    ruled: readonly RuledOut[],
    isNarrowed: boolean,
  ) {
    this.prospects = prospects;
    this.inquiry = inquiry;
    this.allows = allows;
    this.ruled = ruled;
    this.isNarrowed = isNarrowed;
  }

  static begin(prospects: readonly [Prospect, ...Prospect[]], allows: (trial: Trial) => boolean): Search {
    const inquiry = Inquiry.begin(together(prospects), allows);
    return new Search(prospects, inquiry, allows, [], prospects.length === 1);
  }

  learnt(deed: DeedName, outcome: Outcome): Search {
    return this.with(this.inquiry.learnt(deed, outcome), this.ruled);
  }

  ruledOut(deed: DeedName, kind?: Kind): Search {
    return this.with(this.inquiry.ruledOut(deed, kind), [...this.ruled, [deed, kind]]);
  }

  /** The wiring gone on with; where several are still thought of, the first. */
  get wiring(): Wiring {
    return this.inquiry.prospect.wiring;
  }

  get prospect(): Prospect {
    return this.inquiry.prospect;
  }

  get belief(): Belief {
    return this.inquiry.belief;
  }

  get findings(): Inquiry['findings'] {
    return this.inquiry.findings;
  }

  /** What to do next, with the search that asks for it: it may have narrowed itself to one wiring. */
  next(): { readonly trial: Trial | undefined; readonly search: Search } {
    const choice = this.inquiry.next();
    if (choice || this.isNarrowed) return { trial: choice?.test, search: this };
    const narrowed = this.narrowed();
    return narrowed ? narrowed.next() : { trial: undefined, search: this };
  }

  conclusion(): Conclusion {
    const { causes, share } = this.inquiry.conclusion();
    const keyOf = (cause: readonly FaultName[]) => [...cause].sort().join();
    const once = causes.filter(
      (each, at) => causes.findIndex((other) => keyOf(other) === keyOf(each)) === at,
    );
    return { causes: once, share };
  }

  private with(inquiry: Inquiry, ruled: readonly RuledOut[]): Search {
    return new Search(this.prospects, inquiry, this.allows, ruled, this.isNarrowed);
  }

  private narrowed(): Search | undefined {
    const { belief, findings } = this.inquiry;
    let from = 0;
    for (const prospect of this.prospects) {
      const to = from + prospect.hypotheses.length;
      const share = belief.slice(from, to).reduce((sum, each) => sum + each, 0);
      from = to;
      if (share < likelyEnough) continue;
      let inquiry = Inquiry.begin(prospect, this.allows);
      for (const { deed, outcome } of findings) inquiry = inquiry.learnt(deed, outcome);
      for (const [deed, kind] of this.ruled) inquiry = inquiry.ruledOut(deed, kind);
      return new Search(this.prospects, inquiry, this.allows, this.ruled, true);
    }
    return undefined;
  }
}
