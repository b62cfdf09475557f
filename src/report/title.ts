import type { ReportRecord } from './record.ts';

export const titleOf = ({ machine }: ReportRecord): string => `Commissioning record: ${machine.name}`;
