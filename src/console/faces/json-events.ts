import { type Ask, subjectOf } from '../../model/ask.ts';
import type { Subject } from '../../model/machine.ts';
import type { Verdict } from '../../model/verdict.ts';
import type { FaceEvent, Heard, ShownAsk } from '../../session/operator.ts';
import { causeLine } from './cause-lines.ts';

/** An object of one line; keys are written in the order they stand here. */
export type JsonLine = Readonly<Record<string, unknown>>;

/** The line for an event, or undefined for those that only a live view needs. The shapes are a contract: programs read them. */
export function jsonEvent(event: FaceEvent): JsonLine | undefined {
  switch (event.kind) {
    case 'ask':
      return askLine(event);
    case 'ended':
      return {
        kind: 'ended',
        id: event.id,
        by: event.by,
        ...given('answer', event.answer),
        ...given('value', event.value),
      };
    case 'heard':
      return heardLine(event);
    case 'danger': {
      const { id, axis, finding, text } = event;
      return { kind: 'danger', id, axis, finding, text };
    }
    case 'verdict':
      return verdictLine(event.verdict, event.restored);
    case 'cause':
      return causeLine(event);
    case 'refused':
      return {
        kind: 'refused',
        ...given('id', event.id),
        found: event.found,
        allowed: event.allowed,
      };
    case 'finished':
      return { kind: 'finished', session: event.session, report: event.report, exit: event.exit };
    case 'notice':
    case 'own-line':
    case 'reading':
      return undefined;
  }
}

const given = (key: string, value: unknown): JsonLine => (value === undefined ? {} : { [key]: value });

/** `input/switch` is told apart, so that a reader never has to. */
function subjectLine(subject: Subject | undefined): JsonLine {
  if (subject === undefined) return {};
  const [input, name] = subject.split('/');
  return { input, ...given('switch', name) };
}

function askLine({ id, again, ask, text, cautions, answers }: ShownAsk): JsonLine {
  return {
    kind: 'ask',
    id,
    ...given('again', again),
    check: ask.check,
    action: ask.action,
    ...subjectLine(subjectOf(ask)),
    ...detailsOf(ask),
    seconds: ask.seconds,
    text,
    cautions,
    answers,
  };
}

function detailsOf(ask: Ask): JsonLine {
  switch (ask.action) {
    case 'press':
      return { round: ask.round, rounds: ask.rounds };
    case 'power':
      return { what: ask.what, to: ask.to };
    case 'unplug':
    case 'replug':
      return { at: ask.at, conductor: ask.conductor };
    case 'move':
      return {
        axis: ask.axis,
        direction: ask.direction,
        distance: ask.distance,
        unit: ask.unit,
      };
    case 'jumper':
    case 'unjumper':
      return { at: ask.at, terminals: ask.terminals };
    case 'seek':
    case 'home':
      return {
        axis: ask.axis,
        ...given('lateAfter', ask.late?.after),
        ...given('lateBy', ask.late?.by),
      };
    case 'look':
      return { topic: ask.topic, ...('axis' in ask ? { axis: ask.axis } : {}) };
    case 'measure':
      return {
        quantity: ask.quantity,
        unit: ask.unit,
        where: ask.where,
        ...(ask.quantity === 'distance' ? { axis: ask.axis } : {}),
      };
    case 'confirm':
      return {
        topic: ask.topic,
        ...('at' in ask ? { at: ask.at } : {}),
        ...('axes' in ask ? axesLine(ask.axes) : {}),
        ...('axis' in ask ? given('axis', ask.axis) : {}),
        ...('shows' in ask ? given('shows', ask.shows) : {}),
      };
    case 'hands-off':
    case 'release':
    case 'clear':
      return {};
  }
}

const axesLine = (axes: readonly string[] | undefined): JsonLine =>
  axes === undefined ? {} : axes.length === 1 ? { axis: axes[0] } : { axes };

const heardLine = ({ arrived, input, level, active }: Heard): JsonLine => ({
  kind: 'heard',
  arrived,
  input,
  level,
  active,
});

const verdictLine = (verdict: Verdict, restored: boolean): JsonLine => ({
  kind: 'verdict',
  check: verdict.check,
  subject: verdict.subject,
  status: verdict.status,
  evidence: verdict.evidence,
  findings: verdict.findings,
  ...given('causes', verdict.facts.possible?.causes),
  ...(verdict.missing.length > 0 ? { missing: verdict.missing } : {}),
  ...(restored ? { restored: true } : {}),
});
