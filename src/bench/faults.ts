import { contactFaults } from './faults/contact-faults.ts';
import { controllerFaults } from './faults/controller-faults.ts';
import { dogFaults } from './faults/dog-faults.ts';
import { driveFaults } from './faults/drive-faults.ts';
import type { Fault } from './faults/fault.ts';
import { homingFaults } from './faults/homing-faults.ts';
import { beamFaults, movingFaults } from './faults/moving-faults.ts';
import { streamFaults } from './faults/stream-faults.ts';
import { wiringFaults } from './faults/wiring-faults.ts';

/** Every fault the bench knows, by name. */
export const faults = {
  ...contactFaults,
  ...wiringFaults,
  ...controllerFaults,
  ...streamFaults,
  ...driveFaults,
  ...homingFaults,
  ...dogFaults,
  ...movingFaults,
  ...beamFaults,
} satisfies Record<string, Fault>;

export type FaultName = keyof typeof faults;
export const faultNames = Object.keys(faults) as readonly FaultName[];

/** Whether it can only be planted where one axis has two motors, or turns. */
export const needsPortal = (name: FaultName): boolean => (faults[name] as Fault).needs === 'portal';

/** How each is written after `--fault`, and what it does. */
export const faultList: readonly {
  readonly name: FaultName;
  readonly usage: string;
  readonly description: string;
}[] = faultNames.map((name) => {
  const { takes, description } = faults[name];
  return { name, usage: takes === '' ? name : `${name}:${takes}`, description };
});
