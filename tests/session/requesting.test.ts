import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ms } from '../../src/model/units.ts';
import type { FaceEvent } from '../../src/session/operator.ts';
import { briefly, twoSwitches } from './two-switches.ts';
import {
  asksIn,
  judged,
  remove,
  temporaryFolder,
  type VirtualOutcome,
  workplace,
} from './virtual-session.ts';
import { WhenAsked, whenAsked } from './when-asked.ts';

interface Told {
  readonly outcome: VirtualOutcome;
  readonly controller: WhenAsked;
  readonly answeredAt: readonly number[];
  readonly capture: readonly string[];
}

/** A commissioning of a controller that speaks when it is asked; an axis moves for a while `movesAt` a press. */
async function session(movesAt: number | undefined): Promise<Told> {
  const folder = temporaryFolder();
  const place = workplace(twoSwitches);
  const controller = new WhenAsked();
  let presses = 0;
  const answeredAt: number[] = [];
  const watch = (event: FaceEvent): boolean => {
    if (event.kind === 'ended' && event.by === 'answer') answeredAt.push(place.time.now());
    if (event.kind !== 'ask' || event.ask.action !== 'press') return false;
    if (presses++ !== movesAt) return false;
    place.time.after(ms(200), () => {
      controller.moving = true;
    });
    // Nobody answers sooner than two seconds after an ask.
    place.time.after(ms(1200), () => {
      controller.moving = false;
    });
    return false;
  };
  try {
    const outcome = await place.session({
      folder,
      session: { ...briefly, checks: ['rest', 'press', 'open-wire'], streamText: whenAsked() },
      through: controller.through,
      stopAt: watch,
    });
    const capture = readFileSync(join(folder, 'capture.log'), 'latin1').trimEnd().split('\n');
    return { outcome, controller, answeredAt, capture };
  } finally {
    place.leave();
    remove(folder);
  }
}

describe('a controller that speaks when it is asked', () => {
  it('is commissioned by its description, and every byte that was written is in the capture and stated', async () => {
    const { outcome, controller, capture } = await session(undefined);
    // x-home is active when its wire is cut, as is the stop: what the bench's two switches are, seen after the setting.
    expect(judged(outcome)).toContain('press x-home: proved edge');
    expect(judged(outcome)).toContain('press stop: proved edge');
    expect(controller.written.length).toBeGreaterThan(50);
    expect(new Set(controller.written.map(({ text }) => text))).toEqual(new Set(['tell\n']));
    const sent = capture.filter((line) => / tx /.test(line));
    expect(sent).toHaveLength(controller.written.length);
    expect(sent.every((line) => line.endsWith(' tx tell\\x0a'))).toBe(true);
    expect(outcome.facts.sent).toHaveLength(controller.written.length);
  });

  it('is asked nothing while it moves, until the person has answered', async () => {
    const { controller, answeredAt, outcome } = await session(0);
    const moved = controller.written.filter(({ moving }) => moving);
    // One of them brings the report that something moves; the controller had not said so before.
    expect(moved).toHaveLength(1);
    const [first] = moved;
    const from = first?.at ?? Number.NaN;
    const next = controller.written.find(({ at }) => at > from)?.at ?? Number.NaN;
    // It stands still again after a second; that nobody but the person can know, and she has not answered yet.
    expect(next - from).toBeGreaterThan(1700);
    expect(next).toBeLessThanOrEqual(answeredAt.find((at) => at > from) ?? Number.NaN);
    expect(asksIn(outcome).length).toBeGreaterThan(3);
  });
});
