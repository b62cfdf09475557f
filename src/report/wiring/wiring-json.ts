import type { WiringComparison, WiringStudy } from '../../model/wiring-study.ts';

/** One JSON object for programs. JSON knows no infinity: a part left out, or a limit that is nowhere, is null. */
export const wiringJson = (studied: WiringStudy | WiringComparison): string =>
  `${JSON.stringify(studied, (_key, value: unknown) => (typeof value === 'number' && !Number.isFinite(value) ? null : value), 2)}\n`;
