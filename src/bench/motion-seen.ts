import type { Answer, MotionTopic } from '../model/ask.ts';
import type { Eyes } from './eyes.ts';

/** What she may be asked, and what she would notice unasked. */
export type SeenTopic = MotionTopic | 'sagged';

/** What she says of one axis, as she saw it: she sees the machine, not the stream. */
export function motionSeen(eyes: Eyes, topic: SeenTopic, letter: string): Answer {
  if (topic === 'direction') return eyes.wayOf(letter);
  return isSo(eyes, topic, letter) ? 'yes' : 'no';
}

function isSo(eyes: Eyes, topic: Exclude<SeenTopic, 'direction'>, letter: string): boolean {
  switch (topic) {
    case 'reached':
      return eyes.reached(letter);
    case 'buzzed':
      return eyes.buzzed(letter);
    case 'came-back':
      return eyes.cameBack(letter);
    case 'past-switch':
      return eyes.isPastSwitch(letter);
    case 'moved-other':
      return eyes.moved.some((moved) => moved !== letter);
    case 'racked':
      return eyes.racked(letter);
    case 'sagged':
      return eyes.sagged(letter);
  }
}
