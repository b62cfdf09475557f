import type { Side } from '../../model/machine.ts';
import { listed } from '../figures.ts';

/** Arrows and corner as the sketch has them. */
interface Sketched {
  readonly arrows: readonly {
    readonly axis: string;
    readonly side: Side;
    readonly kind: 'declared' | 'seen' | 'really';
  }[];
  readonly home: readonly Side[];
}

export const sketchWords = {
  notWatched:
    'NOT TESTED. Which way each axis runs was not watched. The sketch shows what the machine file declares; it proves nothing.',
  nothing:
    'NOT TESTED. Which way each axis runs was not watched, and the machine file does not say it. Draw here the front of the machine, the positive direction of each axis (the tool over the work, ISO 841) and the home corner.',
  key: 'Seen from above, up and down beside it. Solid arrow: the positive direction of the tool over the work, as the machine file has it. Broken arrow: where a positive command really takes it, where that is another. Filled corner and bar: where the axes stand after homing, as seen where it was, else as declared.',
  standing: 'you stand here',
} as const;

const arrowWords = {
  declared: (axis: string, side: Side) => `${axis} counts up toward the ${side}, as declared`,
  seen: (axis: string, side: Side) => `${axis} counts up toward the ${side}, and was seen to`,
  really: (axis: string, side: Side) => `a positive command of ${axis} really goes to the ${side}`,
} as const;

/** The sketch in words. */
export function sketchText({ arrows, home }: Sketched): string {
  const ways = arrows.map(({ axis, side, kind }) => arrowWords[kind](axis, side));
  const corner = home.length === 0 ? 'where home is, is not known' : `home is at the ${listed(home)}`;
  return `${[...ways, corner].map(sentence).join('. ')}.`;
}

const sentence = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1);
