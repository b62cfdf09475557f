import { visible } from '../../model/visible.ts';
import { counted, momentText } from '../../words/figures.ts';
import type { ReportRecord } from '../record.ts';
import type { Difference, Topic } from './difference.ts';
import { differencesOf } from './differences.ts';
import { suggestionsFor } from './suggestions.ts';

export interface Compared {
  readonly old: string;
  readonly new: string;
  readonly differences: readonly Difference[];
  readonly suggestions: readonly string[];
}

/** Two sessions beside each other. */
export function compared(old: ReportRecord, now: ReportRecord): Compared {
  const differences = differencesOf(old, now);
  return {
    old: old.session.started,
    new: now.session.started,
    differences,
    suggestions: suggestionsFor(differences, old, now),
  };
}

const headings = {
  asked: 'Asked for',
  wiring: 'Wiring',
  rest: 'At rest',
  verdict: 'Results',
  stream: 'Stream',
} satisfies Record<Topic, string>;

/** For a terminal: what changed by topic, and where to look. */
export function compareText({ old, new: now, differences, suggestions }: Compared): string {
  const lines = [`Session of ${momentText(old)} beside session of ${momentText(now)}.`];
  for (const [topic, heading] of Object.entries(headings)) {
    const own = differences.filter((each) => each.topic === topic);
    if (own.length === 0) continue;
    lines.push('', `${heading}:`);
    for (const each of own)
      lines.push(`  ${each.subject}, ${each.what}: ${each.old ?? 'not known'} -> ${each.new ?? 'not known'}`);
  }
  if (suggestions.length > 0) lines.push('', 'Where to look (the tool changes nothing):');
  for (const each of suggestions) lines.push(`  - ${each}`);
  lines.push(
    '',
    differences.length === 0 ? 'Nothing differs.' : `${counted(differences.length, 'difference')}.`,
  );
  return `${lines.map(visible).join('\n')}\n`;
}
