import { type WiringName, wiringNames } from '../../model/wiring-names.ts';
import { closedContactsInSeries } from './circuits/closed-contacts-in-series.ts';
import { contactIntoDrawnOptocoupler } from './circuits/contact-into-drawn-optocoupler.ts';
import { contactIntoFedOptocoupler } from './circuits/contact-into-fed-optocoupler.ts';
import { doorStatus } from './circuits/door-status.ts';
import { hallModule } from './circuits/hall-module.ts';
import { normallyClosedToGround } from './circuits/normally-closed-to-ground.ts';
import { normallyClosedToSupply } from './circuits/normally-closed-to-supply.ts';
import { normallyOpenToGround } from './circuits/normally-open-to-ground.ts';
import { normallyOpenToSupply } from './circuits/normally-open-to-supply.ts';
import { npnIntoFedOptocoupler } from './circuits/npn-into-fed-optocoupler.ts';
import { npnIntoOptocoupler } from './circuits/npn-into-optocoupler.ts';
import { npnIntoPullDown } from './circuits/npn-into-pull-down.ts';
import { npnIntoPullUp } from './circuits/npn-into-pull-up.ts';
import { openContactsInParallel } from './circuits/open-contacts-in-parallel.ts';
import { pnpIntoDivider } from './circuits/pnp-into-divider.ts';
import { pnpIntoDrawnOptocoupler } from './circuits/pnp-into-drawn-optocoupler.ts';
import { pnpIntoOptocoupler } from './circuits/pnp-into-optocoupler.ts';
import { pnpIntoPullUp } from './circuits/pnp-into-pull-up.ts';
import { slottedOpticalModule } from './circuits/slotted-optical-module.ts';
import { stopStatus } from './circuits/stop-status.ts';
import { supervisedContact } from './circuits/supervised-contact.ts';
import { touchPlate } from './circuits/touch-plate.ts';
import { touchProbe } from './circuits/touch-probe.ts';
import { twoWireIntoOptocoupler } from './circuits/two-wire-into-optocoupler.ts';
import type { Circuit } from './template.ts';

/** Every wiring that can be computed. Where several fit what a machine file declares, the first one is meant. */
const all: readonly Circuit[] = [
  closedContactsInSeries,
  openContactsInParallel,
  npnIntoPullUp,
  npnIntoOptocoupler,
  pnpIntoOptocoupler,
  pnpIntoDivider,
  pnpIntoPullUp,
  npnIntoPullDown,
  npnIntoFedOptocoupler,
  pnpIntoDrawnOptocoupler,
  twoWireIntoOptocoupler,
  hallModule,
  slottedOpticalModule,
  touchProbe,
  touchPlate,
  stopStatus,
  doorStatus,
  supervisedContact,
  normallyOpenToGround,
  normallyClosedToGround,
  normallyOpenToSupply,
  normallyClosedToSupply,
  contactIntoFedOptocoupler,
  contactIntoDrawnOptocoupler,
];

const byName = new Map(all.map((circuit) => [circuit.name, circuit]));

/** Throws where a name of the model has no circuit: a test asks for each. */
export function circuitNamed(name: WiringName): Circuit {
  const found = byName.get(name);
  if (found === undefined) throw new RangeError(`No circuit is named ${name}.`);
  return found;
}

export const circuits: readonly Circuit[] = wiringNames.map(circuitNamed);

/** The circuits of a machine file's kind, the one meant first. */
export const circuitsOfKind = (kind: string): readonly Circuit[] =>
  all.filter(({ kinds }) => kinds.includes(kind));
