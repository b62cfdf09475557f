import { setFlagsFromString } from 'node:v8';

/**
 * What is heard while an ask is open is kept until it ends. The engine takes that for a rule, and from then on lays out every
 * reading as if it were there to stay, so that the memory of a long replay comes and goes by as much again. It is told not to.
 */
export const keepMemorySteady = (): void => setFlagsFromString('--no-allocation-site-pretenuring');

/**
 * A replay runs through a great deal of code a few times and through a little of it very often. The engine, left to itself, works over most of
 * it to make it faster, on processors that the replay needs, and the replay is over before that has paid. It is told to wait for what runs
 * six times as long. Code that is kept is good for one set of flags: so this comes when all that replays is loaded.
 */
export const workOverLittle = (): void => setFlagsFromString('--interrupt-budget=400000');
