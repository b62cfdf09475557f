import { type HandsOptions, simulatedHands } from '../../src/bench/simulated-hands.ts';
import type { Answer, Ask } from '../../src/model/ask.ts';
import { stand } from './stand.ts';

/** Simulated hands at a bench in virtual time. */
export function person(faults: readonly string[] = [], options: HandsOptions = {}) {
  const at = stand({ faults });
  const said: { id: number; answer: Answer; at: number; value: number | undefined }[] = [];
  const hands = simulatedHands(
    at.bench,
    at.time,
    (id, answer, value) => said.push({ id, answer, at: at.time.now(), value }),
    options,
  );
  let id = 0;
  return {
    ...at,
    said,
    hands,
    /** Asks, waits, and gives what she answered. */
    ask(ask: Ask, span = 8000): Answer | undefined {
      hands.asked(++id, ask);
      at.wait(span);
      return said.find((each) => each.id === id)?.answer;
    },
  };
}
