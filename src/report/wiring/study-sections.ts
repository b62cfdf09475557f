import type { FaultStudied, WiringStudy } from '../../model/wiring-study.ts';
import { familyWords, rangeText, wiringWords } from '../../words/wiring/circuit-words.ts';
import { faultWords } from '../../words/wiring/fault-words.ts';
import { meterText } from '../../words/wiring/meter-words.ts';
import { nodeText } from '../../words/wiring/node-words.ts';
import { ampText, voltText } from '../../words/wiring/quantities.ts';
import { readingText } from '../../words/wiring/schematic-words.ts';
import {
  beyondWords,
  contactText,
  coverageText,
  foundWords,
  readWords,
  spreadText,
  stateWords,
  studyStatements,
} from '../../words/wiring/study-words.ts';
import { type Block, type Section, strong, text } from '../document.ts';
import { marginBlocks } from './margin-blocks.ts';

/** One wiring as sections; every format lays out these. */
export function studySections(study: WiringStudy): readonly Section[] {
  return [
    { id: 'wiring', heading: 'The wiring', blocks: wiringBlocks(study) },
    { id: 'result', heading: 'What it finds', blocks: resultBlocks(study) },
    { id: 'voltages', heading: 'Voltages', blocks: voltageBlocks(study) },
    { id: 'margins', heading: 'How far from a wrong reading', blocks: marginBlocks(study) },
    { id: 'faults', heading: 'Every fault', blocks: faultBlocks(study) },
    { id: 'proofs', heading: 'What proves it, and what mends it', blocks: proofBlocks(study) },
  ];
}

const wiringBlocks = ({ wiring, ...study }: WiringStudy): readonly Block[] => [
  {
    kind: 'fields',
    fields: [
      ['Wiring', `${wiringWords[wiring.name]} (${wiring.name})`],
      ...(wiring.input === undefined ? [] : [['Input', wiring.input] as const]),
      ['Contact', contactText({ wiring, ...study })],
      ['Input reads as', familyWords[wiring.family]],
      ...wiring.values.map(
        (each) => [each.name, `${rangeText(each)}${each.given ? '' : ', usual value'}`] as const,
      ),
      ...(wiring.unused.length === 0 ? [] : [['Not in this wiring', wiring.unused.join(', ')] as const]),
    ],
  },
];

const resultBlocks = ({ works, coverage, faults }: WiringStudy): readonly Block[] => [
  works
    ? {
        kind: 'fields',
        fields: [
          ['Dangerous faults, new build', coverageText(coverage.fresh)],
          ['Dangerous faults, machine that worked', coverageText(coverage.worked)],
          ['Still missed at rest', missedText(faults)],
        ],
      }
    : strong(studyStatements.mismatch),
  ...[
    studyStatements.computed,
    studyStatements.dangerous,
    studyStatements.found,
    studyStatements.weights,
  ].map(text),
  strong(studyStatements.coverage),
  text(studyStatements.license),
];

/** The likeliest few; the table has all. */
const namedMissed = 6;

function missedText(faults: readonly FaultStudied[]): string {
  const missed = byWorst(faults)
    .filter(({ dangerous, found }) => dangerous && found !== 'at once')
    .map(({ fault }) => faultWords[fault].title);
  const more = missed.length - namedMissed;
  if (missed.length === 0) return 'nothing that is known';
  return `${missed.slice(0, namedMissed).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}

function voltageBlocks({ wiring, states, spread }: WiringStudy): readonly Block[] {
  const nodes = states[0]?.volts.map(({ node }) => node) ?? [];
  const rows = nodes.flatMap((node) => {
    const words = nodeText(node, wiring);
    if (words === undefined) return [];
    return [
      [
        words,
        ...states.map(({ volts }) => {
          const found = volts.find((each) => each.node === node)?.volts;
          return found === undefined ? 'floats' : voltText(found);
        }),
      ],
    ];
  });
  return [
    schematicsOf({ wiring, states }),
    {
      kind: 'table',
      label: 'Voltages against 0 V of the controller',
      columns: [
        { head: 'Against 0 V of the controller', width: 40 },
        ...states.map(({ state }) => ({ head: stateWords[state] })),
      ],
      rows: [
        ...rows,
        ['current in the signal core', ...states.map(({ currents }) => ampText(Math.abs(ampsOf(currents))))],
        ['what the input makes of it', ...states.map(readingText)],
        ['boards within tolerance', ...spread.map(spreadText)],
      ],
    },
  ];
}

/** The drawing in every state, with what is read under it. */
export const schematicsOf = ({ wiring, states }: Pick<WiringStudy, 'wiring' | 'states'>): Block => ({
  kind: 'schematics',
  schematics: states.map((state) => ({
    title: `${stateWords[state.state]}: ${readingText(state)}`,
    wiring,
    state,
  })),
});

const ampsOf = (currents: WiringStudy['states'][number]['currents']): number =>
  currents.find(({ part }) => part === 'signal clamp')?.amps ?? 0;

const faultBlocks = ({ faults }: WiringStudy): readonly Block[] => [
  {
    kind: 'table',
    label: 'Every fault: what is read, and when it is found',
    columns: [
      { head: 'Fault', width: 34 },
      { head: 'rest', group: 'Reported' },
      { head: 'pressed', group: 'Reported' },
      { head: 'unplugged', group: 'Reported' },
      { head: 'Found', width: 16 },
      { head: 'Dangerous' },
      { head: 'new / old', group: 'Likelihood' },
    ],
    rows: byWorst(faults).map((each) => [
      faultWords[each.fault].title,
      readWords[each.rest],
      readWords[each.pressed],
      readWords[each.unplugged],
      foundText(each),
      each.dangerous ? 'yes' : 'no',
      `${each.likelihood.fresh} / ${each.likelihood.worked}`,
    ]),
  },
];

const foundText = ({ found, besides }: FaultStudied): string =>
  besides && found !== 'at once' ? `${foundWords[found]}; another input moves` : foundWords[found];

const proofBlocks = ({ faults, wiring }: WiringStudy): readonly Block[] =>
  byWorst(faults).map(({ fault, meter, beyond }) => {
    const { title, what, fix, look } = { look: undefined, ...faultWords[fault] };
    const proof = meter === undefined ? look : meterText(meter, wiring);
    const fields = [
      ...(proof === undefined ? [] : [[meter === undefined ? 'Look' : 'Meter', proof] as const]),
      ...(beyond === undefined ? [] : [['Beyond it', beyondWords[beyond]] as const]),
      ['Mend', fix] as const,
    ];
    return { kind: 'group', heading: title, blocks: [text(what), { kind: 'fields', fields }] };
  });

const gravest: readonly FaultStudied['found'][] = ['never', 'unplugging', 'next press', 'at once'];

/** Dangerous ones first, of these the last to be found, and the likelier before the rarer. */
const byWorst = (faults: readonly FaultStudied[]): readonly FaultStudied[] =>
  [...faults].sort(
    (one, other) =>
      Number(other.dangerous) - Number(one.dangerous) ||
      gravest.indexOf(one.found) - gravest.indexOf(other.found) ||
      other.likelihood.worked - one.likelihood.worked,
  );
