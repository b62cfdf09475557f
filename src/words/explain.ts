import { type FindingKind, findingKinds, weightOf } from '../model/finding.ts';
import { findingWords } from './findings/catalogue.ts';
import type { FindingEntry } from './findings/entry.ts';
import type { weightWords } from './verdict-words.ts';

export const effect = {
  fault: 'a fault: it fails the check',
  limitation: 'a limitation: the check is proved with limitation at best',
  note: 'a note: it changes no verdict by itself',
} satisfies Record<keyof typeof weightWords, string>;

/** One finding as plain text with Markdown headings left to the caller: title, what it means, what to do next. */
export interface Explained {
  readonly kind: FindingKind;
  readonly title: string;
  readonly weight: string;
  readonly means: string;
  readonly next: readonly string[];
}

export function explained(kind: FindingKind): Explained {
  const entry: Pick<FindingEntry<FindingKind>, 'title' | 'means' | 'next'> = findingWords[kind];
  return { kind, title: entry.title, weight: effect[weightOf[kind]], means: entry.means, next: entry.next };
}

/** Findings of presses and plugs, whose causes are computed from the circuit of the switch. */
const causesComputed: readonly FindingKind[] = [
  'break-undetected',
  'polarity-reversed',
  'never-changes',
  'stuck-active',
  'already-open',
  'flickers',
  'answers-elsewhere',
  'moves-together',
  'misses-presses',
  'chatters',
  'sticks',
  'floats-open',
  'not-enabled',
];
const causesNote =
  'What can cause it on your machine is computed from the circuit the machine file declares: the report names it with the verdict. `tellwire troubleshoot <input>` asks for the tests that tell the causes apart.';

/** The page that `explain <finding>` prints. */
export function explainPage(kind: FindingKind): string {
  const { title, weight, means, next } = explained(kind);
  const steps = next.map((step, i) => `  ${i + 1}. ${step}`);
  const note = causesComputed.includes(kind) ? ['', causesNote] : [];
  return [title, `(${kind}, ${weight})`, '', means, ...note, '', 'What to do next:', ...steps, ''].join('\n');
}

/** docs/findings.md, written from the same words. */
export function findingsPage(): string {
  const list = findingKinds.map((kind) => `- [${explained(kind).title}](#${kind})`);
  const pages = findingKinds.flatMap((kind) => {
    const { title, weight, means, next } = explained(kind);
    return [
      '',
      `<a id="${kind}"></a>`,
      '',
      `## ${title}`,
      '',
      `\`${kind}\` is ${weight}.`,
      '',
      means,
      '',
      'What to do next:',
      '',
      ...next.map((step, i) => `${i + 1}. ${step}`),
    ];
  });
  return [
    '# Findings',
    '',
    'Everything tellwire can find, what it means, and what to do next. `tellwire explain <finding>` prints one of them.',
    'The tool changes nothing itself. Mains, drives, the emergency-stop circuit and guards belong to local code and licensed practice.',
    '',
    ...list,
    ...pages,
    '',
  ].join('\n');
}
