import { counted } from '../figures.ts';
import { type FindingEntry, noChange } from './entry.ts';

export const controllerRestarted: FindingEntry<'controller-restarted'> = {
  title: 'The controller restarted',
  said: ({ times }) =>
    `The controller started anew ${counted(times, 'time')} while it was being listened to.`,
  means:
    'Its clock or its counting began again. What was asked at that moment was asked again; a reference position from before no longer holds. A restart that nobody made is a sign of a weak supply, a short, or a loose plug.',
  next: [
    'Did somebody restart it? Then nothing is to be done.',
    'If not: what was pressed or plugged at that moment? Look there for a short, then at the supply.',
  ],
  change: noChange,
};

export const streamGaps: FindingEntry<'stream-gaps'> = {
  title: 'The stream has gaps',
  said: ({ gaps, lost, unreadable }) =>
    `${counted(gaps, 'interruption')}, ${counted(lost, 'lost report')}, ${counted(unreadable, 'unreadable line')}.`,
  means:
    'What happened inside a gap was not seen. Every check that met one was repeated or reported without its evidence, so no verdict rests on it. Many unreadable lines point to a wrong baud rate, a long or unshielded cable, or noise.',
  next: [
    'A few are usual. Many: try another cable, another port, the right baud rate; keep the cable away from motor cables.',
  ],
  change: noChange,
};
