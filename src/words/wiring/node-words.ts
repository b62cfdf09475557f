import type { WiringAsStudied } from '../../model/wiring-study.ts';

/** Places where a person can put a probe, in the order from the controller to the switch. Inner nodes have no words. */
const places: Readonly<Record<string, (wiring: Pick<WiringAsStudied, 'device' | 'joins'>) => string>> = {
  'logic +': () => 'logic +',
  'field +': () => 'field +',
  'field 0 V': () => 'field 0 V',
  'coupler common': () => 'common of the optocouplers',
  pin: () => 'pin of the controller',
  terminal: () => 'signal terminal of the controller',
  'cable signal': () => 'signal core at the controller',
  'switch signal': () => 'signal core at the switch',
  'device signal': ({ device }) => (isSensor(device) ? 'output of the sensor' : 'signal blade of the switch'),
  'leg 1 end': () => 'far end of the leg',
  'device common': ({ device }) => (isSensor(device) ? '0 V of the sensor' : 'common blade of the switch'),
  'device supply': () => '+ of the sensor',
  'switch common': () => 'common core at the switch',
  'cable common': () => 'common core at the controller',
  'switch supply': () => '+ core at the switch',
  'cable supply': () => '+ core at the controller',
  'neighbour cable signal': () => 'signal core of the input beside it',
  'signal plug': () => 'the signal terminal, in series',
};

const isSensor = (device: WiringAsStudied['device']): boolean =>
  device === 'npn' || device === 'pnp' || device === 'hall' || device === 'optical';

/** Undefined where no probe reaches. */
export function nodeText(
  node: string,
  wiring: Pick<WiringAsStudied, 'device' | 'joins'>,
): string | undefined {
  return node === '0 V' ? '0 V of the controller' : places[node]?.(wiring);
}
