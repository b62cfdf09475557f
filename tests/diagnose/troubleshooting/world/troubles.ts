import type { FaultName } from '../../../../src/model/fault-names.ts';
import { lineTroubles } from './line-troubles.ts';
import { sensorTroubles } from './sensor-troubles.ts';
import { switchTroubles } from './switch-troubles.ts';
import type { Trouble } from './trouble.ts';

/** Every fault that has a name really happens here, or this does not compile. */
const troubles: Readonly<Record<FaultName, Trouble>> = {
  ...lineTroubles,
  ...sensorTroubles,
  ...switchTroubles,
};

export const troubleOf = (name: FaultName): Trouble => troubles[name];
export const partOf = (name: FaultName): string => troubles[name].part;
