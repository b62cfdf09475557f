import type { ScaleCause } from '../../model/scale-facts.ts';
import { lengthText } from '../motion/lengths.ts';
import { causeText } from '../motion/scale-words.ts';
import { type FindingEntry, noChange } from './entry.ts';

const percentOff = (ratio: number): string => {
  const percent = (ratio - 1) * 100;
  return `${Math.abs(percent).toFixed(Math.abs(percent) < 1 ? 3 : 2)} % ${percent > 0 ? 'too long' : 'too short'}`;
};

const likely = (cause: ScaleCause | undefined): string =>
  cause === undefined ? '' : ` It fits ${causeText(cause)}.`;

export const scaleOff: FindingEntry<'scale-off'> = {
  title: 'Lengths come out in the wrong scale',
  said: ({ axis, ratio, cause }) => `${axis} goes ${percentOff(ratio)}.${likely(cause)}`,
  means:
    'Every measured length is the same share of the commanded one, apart from what is lost on a reversal: steps per unit, microsteps, lead, teeth or unit are set otherwise than they are built. A ratio of small whole numbers points to one mistake; a fraction of a per cent to the screw, belt or rack itself, or to the measurement.',
  next: [
    'Compare motor step angle, microsteps, lead or pulley teeth with what is set.',
    'Correct the steps per unit by the number that is given, home again, and measure again at two lengths.',
  ],
  change: ({ axis, steps, corrected, ratio }) =>
    steps === undefined || corrected === undefined
      ? []
      : [
          {
            what: 'setting',
            from: `steps per unit of ${axis}: ${Number(steps.toPrecision(7))}`,
            to: `steps per unit of ${axis}: ${Number(corrected.toPrecision(7))}`,
            why: `${axis} goes ${percentOff(ratio)}.`,
            retest: `homing and scale of ${axis}`,
          },
        ],
};

export const backlash: FindingEntry<'backlash'> = {
  title: 'Motion is lost on reversal (backlash)',
  said: ({ axis, by }) => `${axis} loses ${lengthText(by, 'mm')} each time it turns round.`,
  means:
    'After a reversal the first part of a move only takes up what is loose: nut, belt, couplings, bearings. It is the same at any length, unlike an error of scale. Homing always comes from the same way, so that home is not hurt; parts are.',
  next: [
    'Tighten nut, couplings, belt and bearings; look at the guide.',
    'Where the controller compensates for it, enter it only after the mechanics are right.',
  ],
  change: noChange,
};

export const waysDiffer: FindingEntry<'ways-differ'> = {
  title: 'The two ways do not go equally far',
  said: ({ axis, positive, negative }) =>
    `${axis} goes ${positive.toFixed(4)} of what is commanded one way and ${negative.toFixed(4)} the other.`,
  means:
    'Scale is the same both ways. Where it is not, steps are lost or something slips under load on one of them: the axis that hangs or the cutter that is pushed.',
  next: [
    'Lower speed and acceleration and measure again.',
    'Look for a loose pulley, a slipping coupling, a driver that is too weak.',
  ],
  change: noChange,
};
