import type { WiringComparison } from '../../model/wiring-study.ts';
import { candidateText } from '../../words/wiring/circuit-words.ts';
import { faultWords } from '../../words/wiring/fault-words.ts';
import { compareStatements, studyStatements } from '../../words/wiring/study-words.ts';
import { type Block, list, type Section, strong, text } from '../document.ts';
import { type ComparisonTables, foundText } from './comparison-tables.ts';
import { schematicsOf } from './study-sections.ts';

/** Candidates side by side, the best first; the tables as wide as what they are shown on. */
export function comparisonSections(
  comparison: WiringComparison,
  tables: ComparisonTables,
): readonly Section[] {
  return [
    { id: 'candidates', heading: 'Side by side', blocks: tables.rank(comparison) },
    { id: 'best', heading: 'The best of these', blocks: bestBlocks(comparison) },
    { id: 'dangers', heading: 'Dangerous faults, one by one', blocks: tables.dangers(comparison) },
  ];
}

function bestBlocks({ candidates, stillMissed }: WiringComparison): readonly Block[] {
  const [best] = candidates;
  if (best === undefined) return [];
  return [
    strong(`A: ${candidateText(best.wiring)}.`),
    ...(best.works ? [] : [strong(studyStatements.mismatch)]),
    schematicsOf(best),
    text(compareStatements.order),
    text(stillMissed.length === 0 ? compareStatements.missesNothing : compareStatements.misses),
    list(stillMissed.map((fault) => `${faultWords[fault].title}: found ${foundText(best, [fault])}.`)),
    text(studyStatements.computed),
    text(studyStatements.dangerous),
    text(studyStatements.weights),
    strong(studyStatements.coverage),
    text(studyStatements.license),
  ];
}
