import { describe, expect, it } from 'vitest';
import { circuitNamed } from '../../../src/diagnose/circuit/registry.ts';
import { looks } from '../../../src/diagnose/circuit/state.ts';
import { wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { readingOf } from '../../../src/diagnose/fault-finding/reading-of.ts';
import { faultNamed, faultsOf } from '../../../src/diagnose/fault-finding/registry.ts';

const wiring = wiringOf(circuitNamed('normally-open-to-ground'));
const closed = wiringOf(circuitNamed('normally-closed-to-ground'));
const reported = (of: typeof wiring, ...faults: Parameters<typeof faultNamed>[0][]) =>
  [looks.rest, looks.pressed].map((state) => readingOf(of, state, faults.map(faultNamed)).reported);

describe('two faults at once', () => {
  it('a wrong polarity over a broken wire reads healthy at rest on a normally closed contact', () => {
    expect(reported(closed, 'signal-core-open')).toEqual(['active', 'active']);
    expect(reported(closed, 'signal-core-open', 'polarity-inverted')).toEqual(['inactive', 'inactive']);
  });

  it('a broken wire and a wrong polarity on a normally open contact read pressed for ever', () => {
    expect(reported(wiring, 'signal-core-open', 'polarity-inverted')).toEqual(['active', 'active']);
  });

  it('a missing pull-up shows only through a contact that is not welded', () => {
    expect(readingOf(wiring, looks.rest, [faultNamed('pull-resistor-missing')]).level).toBe('floats');
    const both = [faultNamed('pull-resistor-missing'), faultNamed('contact-welded')];
    expect(readingOf(wiring, looks.rest, both).level).toBe('conducting');
  });

  it('read the same in either order, whichever two they are', () => {
    const electrical = faultsOf(closed).slice(0, 14);
    const wrong = electrical.flatMap((one) =>
      electrical.flatMap((other) => {
        const [this_, that] = [
          readingOf(closed, looks.pressed, [one, other]).level,
          readingOf(closed, looks.pressed, [other, one]).level,
        ];
        return this_ === that || overrules(one.name, other.name)
          ? []
          : [`${one.name} + ${other.name}: ${this_}, ${that}`];
      }),
    );
    expect(wrong).toEqual([]);
  });
});

/** Two ways in which the same contact goes wrong: the later one is the one that is seen. */
const overrules = (one: string, other: string): boolean =>
  [one, other].every((each) =>
    [
      'contact-welded',
      'contact-never-makes',
      'common-blade-unused',
      'wrong-blade',
      'dog-misses',
      'held-operated',
    ].includes(each),
  );
