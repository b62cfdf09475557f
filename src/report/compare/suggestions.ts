import { suggestionWords as words } from '../../words/compare-words.ts';
import { listed } from '../../words/figures.ts';
import type { ReportRecord } from '../record.ts';
import type { Difference } from './difference.ts';

/** What the differences point to, the nearest cause first; each said once. */
export function suggestionsFor(
  differences: readonly Difference[],
  old: ReportRecord,
  now: ReportRecord,
): readonly string[] {
  const of = (subject: string, what: string) =>
    differences.find((each) => each.subject === subject && each.what === what);
  const subjects = [...new Set(differences.map(({ subject }) => subject))];
  return [
    ...new Set([
      ...(differences.some(({ topic }) => topic === 'asked') ? [words['other-checks']] : []),
      ...connectorTogether(differences, now),
      ...exchanged(differences),
      ...subjects.flatMap((subject) => restSuggestions(subject, of)),
      ...differences.flatMap(wiringSuggestions),
      ...differences.flatMap((each) => mended(each, old, now)),
      ...differences.flatMap(streamSuggestions),
    ]),
  ];
}

function restSuggestions(
  subject: string,
  of: (subject: string, what: string) => Difference | undefined,
): readonly string[] {
  const known = (each: Difference | undefined) => each?.old !== undefined && each.new !== undefined;
  const level = known(of(subject, 'rest level'));
  const active = known(of(subject, 'rest active'));
  if (level) return [active ? words['operated-or-open'](subject) : words['contact-and-setting'](subject)];
  return active ? [words['setting-changed'](subject)] : [];
}

/** Two switches whose inputs changed places. */
function exchanged(differences: readonly Difference[]): readonly string[] {
  const moved = differences.filter(({ what }) => what === 'answers on');
  const crossed = moved.filter((each) =>
    moved.some((other) => other !== each && other.old === each.new && other.new === each.old),
  );
  if (crossed.length > 0) return [words['plugs-exchanged'](listed(crossed.map(({ subject }) => subject)))];
  return moved.flatMap(({ subject, old, new: now }) => {
    if (old === undefined || old === 'no input') return [];
    if (now === 'no input') return [words['answers-no-more'](subject)];
    return now === undefined ? [] : [words['answers-elsewhere'](subject)];
  });
}

/** Several inputs of one plug that changed as they were found, not as they were declared. */
function connectorTogether(
  differences: readonly Difference[],
  { inputMap }: ReportRecord,
): readonly string[] {
  const changed = new Set(
    differences
      .filter(({ topic, what }) => topic !== 'asked' && !what.startsWith('declared'))
      .filter(isKnownTwice)
      .map(({ subject }) => subject),
  );
  const hit = (connector: string) =>
    new Set(
      inputMap
        .filter(({ subject, declared }) => declared.connector === connector && changed.has(subject))
        .map(({ input }) => input),
    );
  const connectors = new Set(inputMap.flatMap(({ declared }) => declared.connector ?? []));
  return [...connectors].filter((each) => hit(each).size > 1).map(words['connector-together']);
}

/** What was not tested on one side has not changed. */
const isKnownTwice = ({ old, new: now }: Difference): boolean =>
  [old, now].every((each) => each !== undefined && each !== 'not-tested');

const wiringSuggestions = ({ subject, what, old, new: now }: Difference): readonly string[] =>
  what === 'broken wire noticed' && old === 'yes' && now === 'no' ? [words['break-unnoticed'](subject)] : [];

/** A finding counts as gone only where its check came to a proof again. */
function mended(difference: Difference, before: ReportRecord, now: ReportRecord): readonly string[] {
  if (difference.topic !== 'verdict' || difference.part !== 'findings') return [];
  const { subject, check, old } = difference;
  if (old === undefined) return [];
  const on = (record: ReportRecord) =>
    record.verdicts.find((each) => each.subject === subject && each.check === check);
  const status = on(now)?.status;
  if (status !== 'proved' && status !== 'limited') return [];
  const still = new Set(on(now)?.findings.map(({ facts }) => facts.kind));
  const gone = new Set(
    on(before)
      ?.findings.map(({ facts }) => facts.kind)
      .filter((kind) => !still.has(kind)),
  );
  return gone.size === 0 ? [] : [words.mended(subject, listed([...gone]))];
}

function streamSuggestions(difference: Difference): readonly string[] {
  if (difference.topic !== 'stream' || difference.more === undefined) return [];
  const { what, more } = difference;
  if (what === 'time between reports') return [more ? words.slower : words.faster];
  if (what === 'controller restarts') return more ? [words.restarts] : [];
  if (what === 'lost reports' || what === 'unreadable lines')
    return [more ? words['worse-line'] : words['better-line']];
  return [];
}
