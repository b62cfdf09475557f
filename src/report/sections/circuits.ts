import type { FoundWhen, WiringAsStudied } from '../../model/wiring-study.ts';
import { percentText } from '../../words/figures.ts';
import { familyWords, rangeText, wiringWords } from '../../words/wiring/circuit-words.ts';
import {
  circuitName,
  circuitSentences,
  contactFromWords,
  foundHeads,
} from '../../words/wiring/circuits-words.ts';
import { faultWords } from '../../words/wiring/fault-words.ts';
import { ampText, ohmText, voltText } from '../../words/wiring/quantities.ts';
import { coverageText, studyStatements } from '../../words/wiring/study-words.ts';
import { type Block, strong, type Table, text } from '../document.ts';
import type { ReportRecord } from '../record.ts';
import type { WiringRecord } from '../schema/wiring.ts';
import { schematicsOf } from '../wiring/study-sections.ts';
import { marginsStudied, statesStudied, wiringStudied } from '../wiring-record.ts';

/** Each declared circuit drawn and computed once, and what it does for each switch that has it. */
export function circuitBlocks({ wirings, inputMap }: ReportRecord): readonly Block[] {
  if (wirings.length === 0) return [text(circuitSentences.none)];
  const known = wirings.flatMap(({ switches }) => switches.map(({ subject }) => subject));
  const without = inputMap.map(({ subject }) => subject).filter((subject) => !known.includes(subject));
  return [
    rowsOf(wirings),
    text(circuitSentences.old),
    ...(without.length === 0 ? [] : [text(circuitSentences.without(without))]),
    ...[studyStatements.dangerous, studyStatements.found, studyStatements.weights].map(text),
    strong(studyStatements.coverage),
    text(studyStatements.license),
    ...wirings.map(circuitGroup),
  ];
}

function rowsOf(wirings: readonly WiringRecord[]): Table {
  const share = 'Dangerous faults found';
  const margin = 'Noise margin';
  return {
    kind: 'table',
    label: 'What each circuit finds',
    columns: [
      { head: 'Switch', width: 16 },
      { head: 'Circuit', width: 10 },
      { head: 'Contact', width: 22 },
      { head: 'at once', group: share },
      { head: 'with the next press', group: share },
      { head: 'if unplugged too', group: share },
      { head: 'at rest', group: margin },
      { head: 'pressed', group: margin },
    ],
    rows: wirings.flatMap((each, at) => {
      const { atOnce, byPress, byUnplugging } = each.coverage.worked;
      const { atRest, pressed } = marginsStudied(each);
      const shares = [atOnce, byPress, byUnplugging].map((found) =>
        each.works ? percentText(found) : 'does not work',
      );
      return each.switches.map(({ subject, contactFrom }) => [
        subject,
        circuitName(at),
        [each.wiring.contact, contactFromWords[contactFrom]],
        ...shares,
        voltText(atRest),
        voltText(pressed),
      ]);
    }),
  };
}

function circuitGroup(each: WiringRecord, at: number): Block {
  const wiring = wiringStudied(each);
  const margins = marginsStudied(each);
  return {
    kind: 'group',
    heading: `${circuitName(at)}: ${each.switches.map(({ subject }) => subject).join(', ')}`,
    blocks: [
      text(`${sentence(nameOf(wiring))}. The input reads as ${familyWords[wiring.family]}.`),
      ...(each.works ? [] : [strong(studyStatements.mismatch)]),
      schematicsOf({ wiring, states: statesStudied(each) }),
      {
        kind: 'fields',
        fields: [
          [
            'Values',
            wiring.values
              .map((value) => `${value.name} ${rangeText(value)}${value.given ? '' : ', usual'}`)
              .join('; '),
          ],
          ...(wiring.unused.length === 0
            ? []
            : [['Declared, not in this circuit', wiring.unused.join(', ')] as const]),
          ['Dangerous faults, new build', coverageOrNone(each, 'fresh')],
          ['Dangerous faults, machine that worked', coverageOrNone(each, 'worked')],
          ['Current through the closed contact', ampText(margins.wettingAmps)],
          ['Highest contact resistance surely read as closed', ohmText(margins.highestContactOhms)],
          ['Lowest leak across the open contact surely read as open', ohmText(margins.lowestLeakOhms)],
        ],
      },
      faultTable(each),
    ],
  };
}

/** The contact is said where the wiring's own name leaves it open. */
const nameOf = ({ name, contact }: WiringAsStudied): string =>
  wiringWords[name].includes(contact) ? wiringWords[name] : `${wiringWords[name]}, ${contact}`;

const sentence = (said: string): string => said.charAt(0).toUpperCase() + said.slice(1);

const coverageOrNone = ({ coverage, works }: WiringRecord, age: 'fresh' | 'worked'): string =>
  works ? coverageText(coverage[age]) : 'does not work';

/** The faults by when they are found, the likeliest first. */
function faultTable({ faults }: WiringRecord): Table {
  const likeliest = [...faults].sort((one, other) => other.likelihood.worked - one.likelihood.worked);
  const named = (found: FoundWhen, dangerous: boolean): string => {
    const some = likeliest.filter((each) => each.found === found && each.dangerous === dangerous);
    return some.length === 0 ? 'none' : some.map(({ fault }) => faultWords[fault].title).join('; ');
  };
  return {
    kind: 'table',
    label: 'Faults by when they are found',
    columns: [
      { head: 'Found', width: 16 },
      { head: 'Dangerous faults, likeliest first', width: 48 },
      { head: 'Other faults' },
    ],
    rows: (Object.keys(foundHeads) as FoundWhen[]).map((found) => [
      foundHeads[found],
      named(found, true),
      named(found, false),
    ]),
  };
}
