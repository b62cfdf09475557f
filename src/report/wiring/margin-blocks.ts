import type { WiringStudy } from '../../model/wiring-study.ts';
import { ampText, ohmText, voltText } from '../../words/wiring/quantities.ts';
import { clampText, heatText, timeLimitText } from '../../words/wiring/study-words.ts';
import type { Block } from '../document.ts';

/** How far a sound input is from a wrong reading, and what its parts bear. */
export const marginBlocks = ({ margins, states }: WiringStudy): readonly Block[] => {
  const hottest = mostHeat(states);
  const clamped = Math.max(
    0,
    ...states.flatMap(({ currents }) => currents.filter(isClamp).map(({ amps }) => amps)),
  );
  return [
    {
      kind: 'fields',
      fields: [
        ['Noise margin at rest', `${voltText(margins.atRest)} at the terminal`],
        ['Noise margin pressed', `${voltText(margins.pressed)} at the terminal`],
        ['Current through the closed contact', ampText(margins.wettingAmps)],
        ['Highest contact resistance surely read as closed', ohmText(margins.highestContactOhms)],
        ['Lowest leak across the open contact surely read as open', ohmText(margins.lowestLeakOhms)],
        ['Shortest pulse that surely gets through the filter', timeLimitText(margins.shortestPulse)],
        ['Longest pulse that surely does not', timeLimitText(margins.longestIgnored)],
        ...(hottest === undefined
          ? []
          : [['Most heat in one part of the board', heatText(hottest)] as const]),
        ...(clamped < 1e-3 ? [] : [['Pushed into the pin', clampText(clamped)] as const]),
      ],
    },
  ];
};

type Current = WiringStudy['states'][number]['currents'][number];
const isClamp = ({ part }: Current): boolean => part.startsWith('clamp');
const boardParts = ['series', 'pull-up', 'pull-down', 'divider', 'bleed', 'contact resistor', 'end resistor'];

const mostHeat = (states: WiringStudy['states']): Current | undefined =>
  states
    .flatMap(({ currents }) => currents.filter(({ part }) => boardParts.includes(part)))
    .sort((one, other) => other.watts - one.watts)[0];
