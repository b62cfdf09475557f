import { knownOnly } from '../model/known-only.ts';
import { share } from '../model/units.ts';
import type { MachineWiring, StateStudied, WiringAsStudied, WiringStudy } from '../model/wiring-study.ts';
import type { WiringRecord } from './schema/wiring.ts';

/** Digits that count: a power function may differ in its last bit from one machine to the next, and no reader wants more. */
const significant = (value: number): number => Number(value.toPrecision(6));
const unlessNowhere = (value: number | undefined): number | undefined =>
  value === undefined || !Number.isFinite(value) ? undefined : significant(value);
const nowhere = Number.POSITIVE_INFINITY;

/** A study as the record holds it: without what a meter would show, which is of use at the machine and not on paper. */
export function wiringRecord({ study, switches }: MachineWiring): WiringRecord {
  const { wiring, works, states, margins, spread, faults, coverage } = study;
  const { input: _, contactAssumed: __, values, ...kept } = wiring;
  return {
    switches: switches.map((each) => ({ ...each })),
    wiring: {
      ...kept,
      values: values.map(({ name, nominal, low, high, given: told }) => ({
        name,
        ...knownOnly({ nominal: unlessNowhere(nominal), low: unlessNowhere(low), high: unlessNowhere(high) }),
        given: told,
      })),
      unused: [...kept.unused],
    },
    works,
    states: states.map((each) => stateRecord(each, spread)),
    margins: {
      wettingAmps: significant(margins.wettingAmps),
      ...knownOnly({
        atRest: unlessNowhere(margins.atRest),
        pressed: unlessNowhere(margins.pressed),
        highestContactOhms: unlessNowhere(margins.highestContactOhms),
        lowestLeakOhms: unlessNowhere(margins.lowestLeakOhms),
        shortestPulse: unlessNowhere(margins.shortestPulse),
        longestIgnored: unlessNowhere(margins.longestIgnored),
      }),
    },
    faults: faults.map(({ meter: ___, beyond: ____, ...each }) => ({ ...each })),
    coverage: { fresh: coverageRecord(coverage.fresh), worked: coverageRecord(coverage.worked) },
  };
}

function stateRecord(
  { state, level, reported, volts, currents, closed }: StateStudied,
  spread: WiringStudy['spread'],
): WiringRecord['states'][number] {
  const drawn = spread.find((each) => each.state === state);
  return {
    state,
    level,
    reported,
    volts: volts.map((each) => ({ node: each.node, ...knownOnly({ volts: unlessNowhere(each.volts) }) })),
    currents: currents.map(({ part, amps, watts }) => ({
      part,
      amps: significant(amps),
      watts: significant(watts),
    })),
    closed,
    boards: drawn?.boards ?? 0,
    readings: (drawn?.readings ?? []).map((each) => ({ ...each })),
    sureAtCorners: drawn?.sureAtCorners ?? false,
  };
}

const coverageRecord = ({ dangerous, atOnce, byPress, byUnplugging }: WiringStudy['coverage']['fresh']) => ({
  dangerous,
  atOnce: share(significant(atOnce)),
  byPress: share(significant(byPress)),
  byUnplugging: share(significant(byUnplugging)),
});

/** The wiring of a record as the drawings and tables of a study take it. */
export const wiringStudied = ({ wiring }: WiringRecord): WiringAsStudied => ({
  ...wiring,
  input: undefined,
  contactAssumed: false,
  values: wiring.values.map(({ name, nominal = nowhere, low = nowhere, high = nowhere, given: told }) => ({
    name,
    nominal,
    low,
    high,
    given: told,
  })),
});

export const statesStudied = ({ states }: WiringRecord): readonly StateStudied[] =>
  states.map(({ volts, ...state }) => ({
    ...state,
    volts: volts.map((each) => ({ volts: undefined, ...each }) as unknown as StateStudied['volts'][number]),
  }));

export const marginsStudied = ({ margins }: WiringRecord): WiringStudy['margins'] =>
  ({
    atRest: nowhere,
    pressed: nowhere,
    highestContactOhms: nowhere,
    lowestLeakOhms: nowhere,
    shortestPulse: nowhere,
    longestIgnored: nowhere,
    ...margins,
  }) as WiringStudy['margins'];
