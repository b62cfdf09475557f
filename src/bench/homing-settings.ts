import type { AxisTruth } from './truth.ts';

/** How the controller homes one axis, as its owner typed it in. */
export interface HomingSettings {
  /** The commanded way to the switch. */
  towards: 1 | -1;
  /** One, or one for each motor. */
  inputs: readonly string[];
  approach: number;
  slow: number;
  backOff: number;
  homeValue: number;
  homeOrder: number;
  /** How far it seeks at most, mm. */
  farthest: number;
  /** `in place`: the home value is set where it stands, nothing moves. */
  manner: 'seeks' | 'in place';
  /** Stops for its switch; else it only reports it. */
  heedsSwitch: boolean;
  turnsBack: boolean;
  setsZero: boolean;
  /** Turns to its switch by the shorter way: for an axis without ends. */
  shorterWay: boolean;
}

export const outwardsOf = (end: 'negative' | 'positive'): 1 | -1 => (end === 'positive' ? 1 : -1);

export function homingSettings(truth: AxisTruth): HomingSettings {
  const { homes, homeInputs, approach, slow, backOff, homeValue, homeOrder, stops, turns } = truth;
  return {
    towards: outwardsOf(homes),
    inputs: homeInputs,
    approach,
    slow,
    backOff,
    homeValue,
    homeOrder,
    farthest: turns ? 400 : (stops[1] - stops[0]) * 1.2,
    manner: 'seeks',
    heedsSwitch: true,
    turnsBack: true,
    setsZero: true,
    shorterWay: false,
  };
}
