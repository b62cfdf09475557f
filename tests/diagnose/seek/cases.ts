import { axesCases } from './cases/axes.ts';
import { directionCases } from './cases/direction.ts';
import type { Case } from './cases/parts.ts';
import { switchCases } from './cases/switch.ts';
import { wayCases } from './cases/way.ts';

/** Seeks as the stream alone shows them, most of them after the presses have proved the map. */
export const streamCases: readonly Case[] = [...directionCases, ...switchCases, ...wayCases, ...axesCases];
