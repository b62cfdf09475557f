import { describe, expect, it } from 'vitest';
import type { Latest } from '../../src/diagnose/procedures/asking.ts';
import { pressOnce } from '../../src/diagnose/procedures/press-once.ts';
import type { AskEnd } from '../../src/model/ask.ts';
import { allSwitches } from '../../src/model/machine.ts';
import type { Active, StatusReading } from '../../src/model/reading.ts';
import { ms } from '../../src/model/units.ts';
import { machineFrom } from './stage.ts';

const machine = machineFrom(`machine: One switch
inputs:
  left: { duty: [limit], axis: X, voltage: 5 V }
axes: { X: { travel: 300 } }
`);
const [left] = allSwitches(machine);
if (!left) throw new Error('it has one');
const inputs = ['left'];

const report = (arrived: number, active: Active): StatusReading => ({
  kind: 'status',
  arrived: ms(arrived),
  at: ms(arrived),
  segment: 0,
  lost: 0,
  inputs,
  axes: [],
  activity: 'still',
  levels: ['?'],
  active: [active],
  positions: [],
});

/** A press of which the stream shows the beginning; she says that she let go at 2000 ms. What it tells after that is given. */
function pressed(after: readonly StatusReading[]) {
  const rest = report(0, '0');
  const latest: Latest = { status: rest };
  const press = { round: 1, rounds: 1, expect: 'answer', deaf: [], label: 'press', onGap: 'repeat' } as const;
  const run = pressOnce(left as NonNullable<typeof left>, { check: 'press', ...press }, latest);
  const ended = (from: number, readings: readonly StatusReading[], lead: StatusReading) => {
    const end: AskEnd = { by: 'answer', answer: 'done', answeredAt: ms(from + 1500) };
    return run.next({ ...end, window: { from: ms(from), to: ms(from + 2500), lead, readings } });
  };
  run.next();
  const shown = [...[100, 300, 500].map((at) => report(at, '0')), report(700, '1'), report(900, '1')];
  const letGo = ended(500, [...shown, ...after], rest);
  const asked = letGo.done ? undefined : letGo.value.ask;
  const over = ended(3000, [], after.at(-1) ?? report(900, '1'));
  return { asked, stuck: over.done && over.value.kind === 'pressed' ? over.value.stuck : undefined };
}

describe('a switch that was still operated when last heard of', () => {
  it('sticks where reports that came after it was let go say so', () => {
    const { asked, stuck } = pressed([report(2200, '1'), report(2400, '1')]);
    expect(asked).toMatchObject({ action: 'release', why: 'sticks' });
    expect(stuck).toEqual(['left']);
  });

  it('is only asked to be let go where the stream fell silent: silence does not show that it sticks', () => {
    const { asked, stuck } = pressed([]);
    expect(asked).toMatchObject({ action: 'release', why: 'held' });
    expect(stuck).toEqual([]);
  });
});
