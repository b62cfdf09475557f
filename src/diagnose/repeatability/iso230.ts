import type { SampleFigures } from './sample.ts';

/** Which number is meant by "repeatability": some makers print 2·s under the same name. */
export const repeatabilityDefinition = 'ISO 230-2 unidirectional: 4 s' as const;

/** Unidirectional repeatability of deviations from one target, 4·s (ISO 230-2:2014, clause 3, from memory). */
export const unidirectional = ({ s }: Pick<SampleFigures, 's'>): number => 4 * s;
