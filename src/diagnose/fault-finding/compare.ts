import type { WiringComparison, WiringStudy } from '../../model/wiring-study.ts';

/** Shares of likelihood are told apart in steps of this: the weights are judgement, and no more exact. */
const step = 0.02;

/** Best first: what works at all, then what is found at once on a machine that worked, then what a press finds, then the smaller of the two margins in volts. */
export function compareWirings(studies: readonly WiringStudy[]): WiringComparison {
  const candidates = [...studies].sort(
    (one, other) =>
      Number(other.works) - Number(one.works) ||
      stepped(other.coverage.worked.atOnce) - stepped(one.coverage.worked.atOnce) ||
      stepped(other.coverage.worked.byPress) - stepped(one.coverage.worked.byPress) ||
      smallest(other) - smallest(one),
  );
  const missed =
    candidates[0]?.faults.filter(({ dangerous, found }) => dangerous && found !== 'at once') ?? [];
  return {
    candidates,
    stillMissed: [...missed]
      .sort((one, other) => other.likelihood.worked - one.likelihood.worked)
      .map(({ fault }) => fault),
  };
}

const stepped = (share: number): number => Math.round(share / step);
const smallest = ({ margins }: WiringStudy): number => Math.min(margins.atRest, margins.pressed);
