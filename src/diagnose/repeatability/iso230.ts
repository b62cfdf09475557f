import { sampleFigures } from './sample.ts';

/** Deviations from one target, approached from both ways; any unit of length. */
export interface TargetRuns {
  readonly up: readonly number[];
  readonly down: readonly number[];
}

export interface WayFigures {
  readonly mean: number;
  readonly s: number;
  /** Unidirectional repeatability at this target: 4·s. */
  readonly repeatability: number;
}

export interface TargetFigures {
  readonly up: WayFigures;
  readonly down: WayFigures;
  /** Reversal value: mean of the one way less mean of the other. */
  readonly reversal: number;
  readonly repeatability: number;
}

export interface PositioningFigures {
  readonly targets: readonly TargetFigures[];
  readonly repeatabilityUp: number;
  readonly repeatabilityDown: number;
  readonly repeatability: number;
  readonly reversal: number;
  readonly meanReversal: number;
  readonly accuracy: number;
}

/** Which number is meant by "repeatability": some makers print 2·s under the same name. */
export const repeatabilityDefinition = 'ISO 230-2 unidirectional: 4 s' as const;

/** Unidirectional repeatability of deviations from one target, 4·s (ISO 230-2:2014, clause 3, from memory). */
export const unidirectional = (deviations: readonly number[]): number => 4 * sampleFigures(deviations).s;

/**
 * Positioning figures of an axis by ISO 230-2 (2006 and 2014; clause 3, from memory): R = max(2s↑ + 2s↓ + |B|, R↑, R↓), A = max(x̄ + 2s) − min(x̄ − 2s) over both
 * ways. Throws where a target has fewer than two runs either way.
 */
export function positioningFigures(targets: readonly TargetRuns[]): PositioningFigures {
  const figures = targets.map(({ up, down }) => {
    if (up.length < 2 || down.length < 2)
      throw new RangeError('A deviation needs two runs at least from either way.');
    const [above, below] = [wayFigures(up), wayFigures(down)];
    const reversal = above.mean - below.mean;
    const both = 2 * above.s + 2 * below.s + Math.abs(reversal);
    return {
      up: above,
      down: below,
      reversal,
      repeatability: Math.max(both, above.repeatability, below.repeatability),
    };
  });
  const ways = figures.flatMap(({ up, down }) => [up, down]);
  const most = (numbers: readonly number[]) => Math.max(...numbers);
  return {
    targets: figures,
    repeatabilityUp: most(figures.map(({ up }) => up.repeatability)),
    repeatabilityDown: most(figures.map(({ down }) => down.repeatability)),
    repeatability: most(figures.map((each) => each.repeatability)),
    reversal: most(figures.map((each) => Math.abs(each.reversal))),
    meanReversal: sampleFigures(figures.map((each) => each.reversal)).mean,
    accuracy:
      most(ways.map(({ mean, s }) => mean + 2 * s)) - Math.min(...ways.map(({ mean, s }) => mean - 2 * s)),
  };
}

function wayFigures(deviations: readonly number[]): WayFigures {
  const { mean, s } = sampleFigures(deviations);
  return { mean, s, repeatability: 4 * s };
}
