import type { FaultName } from '../../model/fault-names.ts';
import type { WiringComparison, WiringStudy } from '../../model/wiring-study.ts';
import { percentText } from '../../words/figures.ts';
import { candidateText } from '../../words/wiring/circuit-words.ts';
import { faultWords } from '../../words/wiring/fault-words.ts';
import { ampText, ohmText, voltText } from '../../words/wiring/quantities.ts';
import { compareStatements, foundWords, studyStatements } from '../../words/wiring/study-words.ts';
import { type Block, list, type Section, strong, text } from '../document.ts';
import { schematicsOf } from './study-sections.ts';

/** Candidates side by side, the best first. */
export function comparisonSections(comparison: WiringComparison): readonly Section[] {
  return [
    { id: 'candidates', heading: 'Side by side', blocks: rankBlocks(comparison) },
    { id: 'best', heading: 'The best of these', blocks: bestBlocks(comparison) },
    { id: 'dangers', heading: 'Dangerous faults, one by one', blocks: [dangerTable(comparison)] },
  ];
}

const rankBlocks = ({ candidates }: WiringComparison): readonly Block[] => [
  {
    kind: 'table',
    label: 'Candidates, best first',
    columns: [
      { head: 'Wiring', width: 26 },
      { head: 'at once', group: 'Dangerous faults found, old machine' },
      { head: 'with a press', group: 'Dangerous faults found, old machine' },
      { head: 'at once', group: 'New build' },
      { head: 'rest', group: 'Margin' },
      { head: 'pressed', group: 'Margin' },
      { head: 'Contact current' },
      { head: 'Contact up to' },
      { head: 'Leak down to' },
    ],
    rows: candidates.map(({ wiring, works, coverage, margins }, at) => [
      `${letter(at)}: ${candidateText(wiring)}`,
      ...[coverage.worked.atOnce, coverage.worked.byPress, coverage.fresh.atOnce].map((share) =>
        works ? percentText(share) : compareStatements.doesNotWork,
      ),
      voltText(margins.atRest),
      voltText(margins.pressed),
      ampText(margins.wettingAmps),
      ohmText(margins.highestContactOhms),
      ohmText(margins.lowestLeakOhms),
    ]),
  },
];

const letter = (at: number): string => String.fromCharCode(65 + (at % 26));

function bestBlocks({ candidates, stillMissed }: WiringComparison): readonly Block[] {
  const [best] = candidates;
  if (best === undefined) return [];
  return [
    strong(`A: ${candidateText(best.wiring)}.`),
    ...(best.works ? [] : [strong(studyStatements.mismatch)]),
    schematicsOf(best),
    text(compareStatements.order),
    text(stillMissed.length === 0 ? compareStatements.missesNothing : compareStatements.misses),
    list(stillMissed.map((fault) => `${faultWords[fault].title}: found ${foundText(best, fault)}.`)),
    text(studyStatements.computed),
    text(studyStatements.dangerous),
    text(studyStatements.weights),
    strong(studyStatements.coverage),
    text(studyStatements.license),
  ];
}

function foundText(study: WiringStudy, fault: FaultName): string {
  const found = study.faults.find((each) => each.fault === fault);
  if (found === undefined) return 'cannot happen';
  return found.dangerous ? foundWords[found.found] : `harmless, ${foundWords[found.found]}`;
}

/** Every fault that is dangerous in at least one candidate. */
function dangerTable({ candidates }: WiringComparison): Block {
  const dangers = [
    ...new Set(
      candidates.flatMap(({ faults }) =>
        faults.filter(({ dangerous }) => dangerous).map(({ fault }) => fault),
      ),
    ),
  ];
  return {
    kind: 'table',
    label: 'Dangerous faults by candidate',
    columns: [{ head: 'Fault', width: 34 }, ...candidates.map((_, at) => ({ head: letter(at) }))],
    rows: dangers.map((fault) => [
      faultWords[fault].title,
      ...candidates.map((study) => foundText(study, fault)),
    ]),
  };
}
