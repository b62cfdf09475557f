import type { FirstMove } from '../../model/procedure.ts';
import type { Direction } from '../motion/runs.ts';
import type { SeekExpectation } from './expectation.ts';
import type { SeekAnswers } from './observe.ts';

/** What really comes of a positive command: 1 goes as ISO 841 has it, −1 the other way; undefined where nobody saw. */
export function senseOf(first: FirstMove | undefined): Direction | undefined {
  if (first?.commanded === undefined || first.tool === undefined || first.tool === 'none') return undefined;
  return (first.tool === 'positive') === (first.commanded === 1) ? 1 : -1;
}

/** What was seen of the first move, said of a later one that was commanded the given way. */
export function toolIn(first: FirstMove | undefined, way: Direction | undefined): SeekAnswers['tool'] {
  if (first?.tool === 'none') return 'none';
  const sense = senseOf(first);
  if (sense === undefined || way === undefined) return undefined;
  return sense * way === 1 ? 'positive' : 'negative';
}

/** An expectation of commands, turned round where commands are known to go the other way: what counts is where the tool goes. */
export function reallyExpected(expectation: SeekExpectation, sense: Direction | undefined): SeekExpectation {
  if (sense !== -1) return expectation;
  const { toward, towardWork } = expectation;
  return { ...expectation, toward: turnedRound(toward), towardWork: turnedRound(towardWork) };
}

const turnedRound = (way: Direction | undefined): Direction | undefined =>
  way === undefined ? undefined : way === 1 ? -1 : 1;

/** It went the same way there and back. */
export const turnsOneWay = (first: FirstMove | undefined): boolean =>
  first?.tool !== undefined && first.tool !== 'none' && first.back === first.tool;
