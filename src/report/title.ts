import { momentText } from '../words/figures.ts';
import type { ReportRecord } from './record.ts';

export const titleOf = ({ machine }: ReportRecord): string => `Commissioning record: ${machine.name}`;

/** When and by what: the only date in a record is the one the session stored. */
export const whenOf = ({ session, tool }: ReportRecord): string =>
  `Session started ${momentText(session.started)}, written by tellwire ${tool.version}`;
