import type { ScaleCause } from '../model/scale-facts.ts';

type Of<Kind extends ScaleCause['kind']> = Extract<ScaleCause, { readonly kind: Kind }>;

const words = {
  microsteps: ({ set, real }) => `${set} microsteps set where the driver makes ${real}`,
  'screw-starts': ({ starts }) => `a screw of ${starts} starts whose pitch was taken for its lead`,
  lead: ({ set, real }) => `a lead of ${real} mm where ${set} mm is set`,
  'diameter-for-radius': () => 'a diameter taken for a radius, or the other way round',
  'step-angle': () => 'a step angle of 0.9° taken for 1.8°, or the other way round',
  'inch-for-mm': () => 'inches taken for millimetres, or the other way round',
  'inch-pitch': ({ set, real }) =>
    `a pitch of ${real} mm where ${set} mm is set: an inch screw or belt beside a metric one`,
  'forgotten-pi': () => 'a factor of π left out or put in once too often',
  teeth: ({ set, real }) => `a pulley of ${real} teeth where ${set} are set`,
  gear: ({ numerator, denominator }) => `a ratio of ${numerator} to ${denominator} that was left out`,
} satisfies { readonly [Kind in ScaleCause['kind']]: (cause: Of<Kind>) => string };

/** A mistake of building or setting that multiplies every length alike, as the end of "it fits ...". */
export const causeText = (cause: ScaleCause): string =>
  (words[cause.kind] as (cause: ScaleCause) => string)(cause);
