import type { FaultName } from '../../model/fault-names.ts';
import { conductorFaultWords } from './conductor-fault-words.ts';
import type { FaultEntry } from './fault-entry.ts';
import { inputFaultWords } from './input-fault-words.ts';
import { switchFaultWords } from './switch-fault-words.ts';

/** Every fault has its words, or this does not compile. */
export const faultWords: Readonly<Record<FaultName, FaultEntry>> = {
  ...conductorFaultWords,
  ...switchFaultWords,
  ...inputFaultWords,
};
