import { type FaultName, faultNames } from '../../model/fault-names.ts';
import type { Wiring } from '../circuit/wiring.ts';
import type { Entry, Fault } from './fault.ts';
import { boardFaults } from './faults/boards.ts';
import { conductorFaults } from './faults/conductors.ts';
import { contactFaults } from './faults/contacts.ts';
import { mechanicalFaults } from './faults/mechanics.ts';
import { sensorFaults } from './faults/sensors.ts';
import { settingFaults } from './faults/settings.ts';
import { surroundingFaults } from './faults/surroundings.ts';

/** Every name has its entry, or this does not compile. */
const entries: Readonly<Record<FaultName, Entry>> = {
  ...conductorFaults,
  ...contactFaults,
  ...mechanicalFaults,
  ...boardFaults,
  ...sensorFaults,
  ...surroundingFaults,
  ...settingFaults,
};

export const faultNamed = (name: FaultName): Fault => ({ name, ...entries[name] });

export const faults: readonly Fault[] = faultNames.map(faultNamed);

/** What can happen to this wiring at all. */
export const faultsOf = (wiring: Wiring): readonly Fault[] => faults.filter(({ applies }) => applies(wiring));
