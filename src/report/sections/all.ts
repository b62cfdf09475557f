import { type SectionId, sectionWords } from '../../words/record-words.ts';
import { type Block, list, type Section, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import { annexBlocks } from './annex.ts';
import { causeBlocks } from './cause.ts';
import { circuitBlocks } from './circuits.ts';
import {
  acceptanceBlocks,
  changeBlocks,
  explainedBlocks,
  functionBlocks,
  openBlocks,
  retestBlocks,
  untestedBlocks,
} from './closing.ts';
import { envelopeBlocks } from './envelope.ts';
import { homingBlocks, repeatBlocks, stoppingBlocks } from './homing.ts';
import { identityBlocks, methodBlocks, peopleBlocks } from './identity.ts';
import { mapTable } from './map.ts';
import { motionBlocks } from './motion.ts';
import { scaleBlocks } from './scale.ts';
import { sketchBlocks } from './sketch.ts';
import { summaryBlocks } from './summary.ts';
import { verdictBlocks } from './verdicts.ts';

/** Every section of a record, in the order of the paper. None is left out where it has nothing: its opening says so. */
const contents = {
  summary: summaryBlocks,
  open: openBlocks,
  cause: causeBlocks,
  changes: changeBlocks,
  identity: identityBlocks,
  people: peopleBlocks,
  untested: untestedBlocks,
  method: methodBlocks,
  sketch: sketchBlocks,
  map: ({ inputMap }) => [mapTable(inputMap)],
  functions: functionBlocks,
  verdicts: verdictBlocks,
  circuits: circuitBlocks,
  findings: explainedBlocks,
  motion: motionBlocks,
  homing: homingBlocks,
  repeat: repeatBlocks,
  stopping: stoppingBlocks,
  envelope: envelopeBlocks,
  scale: scaleBlocks,
  cautions: ({ cautions }) => [list(cautions)],
  limitations: ({ limitations }) => [list(limitations)],
  retest: retestBlocks,
  acceptance: acceptanceBlocks,
  annex: annexBlocks,
} satisfies Record<SectionId, (record: ReportRecord) => readonly Block[]>;

export function sectionsOf(record: ReportRecord): readonly Section[] {
  return (Object.keys(contents) as SectionId[]).map((id) => {
    const { heading, opening } = sectionWords[id];
    const blocks = contents[id](record);
    return {
      id,
      heading,
      ...(id === 'untested' && { stress: 'own-page' as const }),
      blocks: opening === '' ? blocks : [text(opening), ...blocks],
    };
  });
}
