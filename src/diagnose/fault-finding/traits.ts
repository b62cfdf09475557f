import type { Wiring } from '../circuit/wiring.ts';

/** What kind of wiring a fault can happen to. */
export type Trait = (wiring: Wiring) => boolean;

export const everywhere: Trait = () => true;
export const both =
  (...traits: readonly Trait[]): Trait =>
  (wiring) =>
    traits.every((trait) => trait(wiring));
export const either =
  (...traits: readonly Trait[]): Trait =>
  (wiring) =>
    traits.some((trait) => trait(wiring));
export const not =
  (trait: Trait): Trait =>
  (wiring) =>
    !trait(wiring);

const device =
  (...devices: readonly Wiring['template']['device'][]): Trait =>
  ({ template }) =>
    devices.includes(template.device);
const stage =
  (...stages: readonly Wiring['template']['stage'][]): Trait =>
  ({ template }) =>
    stages.includes(template.stage);

export const groundSwitching: Trait = ({ template }) => template.joins === '0 V';
export const supplySwitching: Trait = ({ template }) => template.joins === '+';

/** A lever, a dog, a button, a door: metal that meets metal. */
export const dryContact = device('contact', 'stop contact', 'door contact');
export const touch = device('touch plate', 'touch probe');
export const plate = device('touch plate');
export const stopButton = device('stop contact');
export const threeWire = device('npn', 'pnp');
export const npnSensor = device('npn');
export const pnpSensor = device('pnp');
export const twoWire = device('two-wire');
export const hall = device('hall');
export const optical = device('optical');
export const module = device('hall', 'optical');
export const inductive = device('npn', 'pnp', 'two-wire');
/** Something that a dog, a flag or a target works. */
export const worked = either(device('contact'), inductive, module);

export const coupler = stage('fed optocoupler', 'drawn optocoupler');
export const logicStage = stage('pull-up', 'pull-down', 'divider');
export const pulled = stage('pull-up', 'pull-down');
export const series: Trait = ({ template }) => template.joined === 'series';
export const parallel: Trait = ({ template }) => template.joined === 'parallel';
/** A push to one side: three terminals, of which one is common. */
export const changeover = both(device('contact'), not(either(series, parallel)));
