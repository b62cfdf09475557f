import { setFlagsFromString } from 'node:v8';

/**
 * What is heard while an ask is open is kept until it ends. The engine takes that for a rule, and from then on lays out every
 * reading as if it were there to stay, so that the memory of a long replay comes and goes by as much again. It is told not to.
 */
export const keepMemorySteady = (): void => setFlagsFromString('--no-allocation-site-pretenuring');
