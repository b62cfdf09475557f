import { between, ms } from '../model/units.ts';
import type { CheckName, Trace, TraceLabel } from '../model/verdict.ts';
import { listed, timeText } from './figures.ts';

const labels = {
  rest: 'Hands off',
  press: 'Press',
  out: 'Plug pulled',
  'press-while-out': 'Press while the plug was out',
  'press-after-replug': 'Press after plugging in again',
  stop: 'Stop pressed',
  unlatch: 'Stop unlatched',
} satisfies Record<TraceLabel, string>;

export const traceWords = (label: TraceLabel, _check: CheckName): string => labels[label];

const activeWord = { '1': 'active', '0': 'inactive', '?': 'not reported' } as const;
const levelWord = { H: 'high', L: 'low', '?': 'not reported' } as const;

/** A trace told for those who cannot see the drawing: each value with the span in which it was reported. At most eight spans a signal. */
export function traceText({ signals, samples }: Trace): string {
  const told = signals.map(({ input, points }) => {
    const spans = spansOf(points);
    const shown = spans
      .slice(0, 8)
      .map(({ word, from, to }) =>
        from === to ? `${word} at ${timeText(from)}` : `${word} from ${timeText(from)} to ${timeText(to)}`,
      );
    const more = spans.length > 8 ? `, and ${spans.length - 8} more changes` : '';
    return `${input}: ${listed(shown, 'then')}${more}`;
  });
  const all = signals.flatMap(({ points }) => points.map(({ t }) => t));
  const length = all.reduce((most, t) => Math.max(most, t), 0);
  return `${told.join('; ')}. ${samples} reports over ${timeText(between(ms(0), ms(length)))}.`;
}

function spansOf(points: Trace['signals'][number]['points']) {
  const spans: { word: string; from: (typeof points)[number]['t']; to: (typeof points)[number]['t'] }[] = [];
  for (const { t, active, level } of points) {
    const word = active === '?' ? `level ${levelWord[level]}` : activeWord[active];
    const last = spans.at(-1);
    if (last?.word === word) last.to = t;
    else spans.push({ word, from: t, to: t });
  }
  return spans;
}
