import { describe, expect, it } from 'vitest';
import { excursions } from '../../../src/diagnose/signal/excursion.ts';
import { movers } from '../../../src/diagnose/signal/movers.ts';
import type { Window } from '../../../src/model/procedure.ts';
import type { Active, EdgeReading, Level, StatusReading } from '../../../src/model/reading.ts';
import { ms } from '../../../src/model/units.ts';

const inputs = ['home', 'far', 'probe'];

/** A report every 10 ms, its lists its own, as a stream hands them over that was not kept in step. */
function status(n: number, levels: string, active: string, names: readonly string[] = inputs): StatusReading {
  const moment = { arrived: ms(n * 10), at: ms(n * 10), segment: 0, lost: 0 };
  const lists = { levels: [...levels] as Level[], active: [...active] as Active[], positions: [] };
  return { kind: 'status', ...moment, inputs: names, axes: [], activity: 'still', ...lists };
}
const edge = (at: number, input: string, level: 'H' | 'L'): EdgeReading => ({
  kind: 'edge',
  arrived: ms(at),
  at: ms(at),
  segment: 0,
  lost: 0,
  input,
  level,
});
const window = (lead: StatusReading | undefined, ...readings: Window['readings']): Window => ({
  from: ms(0),
  to: ms(1000),
  lead,
  readings,
});
const moved = (given: Window) => [...movers(given)].sort();

describe('which inputs may have changed in a window', () => {
  it('are none where every report says the same, whatever lists it comes in', () =>
    expect(moved(window(status(0, 'LLH', '000'), status(1, 'LLH', '000'), status(2, 'LLH', '000')))).toEqual(
      [],
    ));

  it('are those whose level or whose active bit was another, and of those that are known less', () => {
    expect(moved(window(status(0, 'LLH', '000'), status(1, 'LHH', '000')))).toEqual(['far']);
    expect(moved(window(status(0, 'LLH', '000'), status(1, 'LLH', '001')))).toEqual(['probe']);
    expect(moved(window(undefined, status(1, '?LH', '?00'), status(2, 'LLH', '000')))).toEqual(['home']);
  });

  it('are all where the stream began to report others', () => {
    const before = status(0, 'LL', '00', ['home', 'far']);
    expect(moved(window(before, status(1, 'LL', '00', ['home', 'gate'])))).toEqual(['far', 'gate', 'home']);
  });

  it('are those with an edge: a pulse between two reports shows in neither', () => {
    const pulse = window(
      status(0, 'LLH', '000'),
      status(1, 'LLH', '000'),
      edge(13, 'far', 'H'),
      edge(17, 'far', 'L'),
      status(2, 'LLH', '000'),
    );
    expect(moved(pulse)).toEqual(['far']);
    expect(excursions(pulse)).toMatchObject([{ input: 'far', edges: 2, returned: true }]);
  });
});
