import type { Remarks } from '../../transport/stream/description/write.ts';
import { learnRemarks, learnSummary, notBoundWords } from '../../words/learn-words.ts';
import type { LearnOutcome } from './course.ts';

/** What is not bound, and why, a line each. */
function openLines({ settled, refused, axesOpen }: LearnOutcome): readonly string[] {
  return [
    ...[...refused].map((name) => `${name}: ${notBoundWords.refused}`),
    ...[...settled.open]
      .filter(([name]) => !refused.has(name))
      .map(([name, why]) => `${name}: ${notBoundWords[why]}`),
    ...axesOpen.map((letter) => `${letter}: no number followed its moves alone, or it was not moved.`),
  ];
}

export function remarksOf(outcome: LearnOutcome, tool: string): Remarks {
  const { description, settled, trials, accepted, stopped } = outcome;
  return {
    head: [
      ...learnRemarks.head(description.stream, trials, tool),
      ...(stopped ? [learnRemarks.stopped] : accepted ? [] : [learnRemarks.notAccepted]),
    ],
    of: Object.fromEntries([
      ...settled.bound.map(({ name, chance }) => [name, learnRemarks.input(trials, chance)] as const),
      ...description.axes.map(({ letter, at }) => [`axis ${letter}`, learnRemarks.axis(at.scale)] as const),
      ['activity', learnRemarks.activity] as const,
    ]),
    tail: openLines(outcome),
  };
}

export const summaryLines = (outcome: LearnOutcome): readonly string[] =>
  learnSummary(
    outcome.description.inputs.map(({ name }) => name),
    outcome.description.axes.map(({ letter }) => letter),
    openLines(outcome),
  );
