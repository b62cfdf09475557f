import { findingKinds, weightOf } from '../model/finding.ts';
import { knownOnly } from '../model/known-only.ts';
import type { AskRecord, SessionFacts } from '../model/session-facts.ts';
import type { Verdict } from '../model/verdict.ts';
import { retestTriggers } from '../words/acceptance.ts';
import { explained } from '../words/explain.ts';
import { findingWords, saidOf } from '../words/findings/catalogue.ts';
import { changesFor } from './changes.ts';
import { exitCodeFor } from './exit-code.ts';
import { inputMap } from './input-map.ts';
import { cautionsFor, limitationsOf } from './limitations.ts';
import { type ReportRecord, reportRecordSchema } from './record.ts';
import type { VerdictRecord } from './schema/verdict.ts';
import { shown } from './shown.ts';
import { untestedOf } from './untested.ts';
import { saysOf } from './verdict-says.ts';
import { wiringRecord } from './wiring-record.ts';
import { worstOf } from './worst.ts';

/**
 * The record of a session. The same facts give the same record anywhere; text from streams and files stands in it with its control
 * characters shown. Without `circuits` it holds none of what is computed of them, which takes longer than all the rest, and its fields
 * stand in no set order: it is not one to be kept.
 */
export function buildRecord(facts: SessionFacts, { circuits = true } = {}): ReportRecord {
  const { tool, machine, verdicts, register, stream } = facts;
  const kinds = new Set(verdicts.flatMap((each) => each.findings.map(({ kind }) => kind)));
  const incomplete = facts.stopped || register.length > 0;
  const built: ReportRecord = {
    schemaVersion: 1,
    tool: { ...tool },
    session: {
      started: facts.started,
      port: facts.port,
      stopped: facts.stopped,
      exit: exitCodeFor(verdicts, incomplete),
      asked: {
        checks: [...facts.asked.checks],
        presses: facts.asked.presses,
        rest: facts.asked.rest,
        ...knownOnly({ only: facts.asked.only && [...facts.asked.only] }),
      },
      machineHash: facts.machineHash,
      captureHash: facts.captureHash,
    },
    machine: {
      name: machine.name,
      units: machine.units,
      polarity: machine.polarity,
      ...knownOnly({ stand: machine.stand }),
      axes: machine.axes.map(({ letter, kind, motors, travel, homes, positive, moves }) => ({
        letter,
        kind,
        motors,
        ...knownOnly({ travel: travel as number | undefined, homes, positive, moves }),
      })),
    },
    worst: worstOf([...verdicts.map(({ status }) => status), ...(incomplete ? ['not-tested' as const] : [])]),
    inputMap: [...inputMap(machine, verdicts)],
    wirings: circuits ? (facts.wirings ?? []).map(wiringRecord) : [],
    verdicts: verdicts.map((each) => verdictRecord(each, facts)),
    explained: findingKinds
      .filter((kind) => kinds.has(kind))
      .map((kind) => {
        const { title, means, next } = explained(kind);
        return { kind, title, means, next: [...next] };
      }),
    untested: [...untestedOf(facts)],
    cautions: [...cautionsFor(facts)],
    limitations: [...limitationsOf(facts)],
    changes: [...changesFor(facts)],
    stillOut: register.map(({ subject, at }) => ({ subject, at })),
    retest: [...retestTriggers],
    stream: { ...stream, ...knownOnly({ median: stream.median, longest: stream.longest }) },
    sent: facts.sent.map(({ at, text, own }) => ({ at, text, ...knownOnly({ own }) })),
    dialogue: facts.dialogue.map(askRecord),
  };
  // Through the schema, so that a record just built and one read back have their fields in the same order.
  return circuits ? reportRecordSchema.parse(shown(built)) : shown(built);
}

function verdictRecord(verdict: Verdict, { machine }: SessionFacts): VerdictRecord {
  const scene = { machine, subject: verdict.subject, together: verdict.findings.map(({ kind }) => kind) };
  return {
    check: verdict.check,
    subject: verdict.subject,
    status: verdict.status,
    evidence: verdict.evidence,
    missing: [...verdict.missing],
    facts: verdict.facts,
    findings: verdict.findings.map((finding) => ({
      weight: weightOf[finding.kind],
      title: findingWords[finding.kind].title,
      said: saidOf(finding, scene),
      facts: finding,
    })),
    says: [...saysOf(verdict)],
    traces: [...verdict.traces],
  };
}

const askRecord = ({ id, check, text, cautions, from, again, subject, to, by, answer }: AskRecord) => ({
  id,
  check,
  text,
  cautions: [...cautions],
  from,
  ...knownOnly({ again, subject, to, by, answer }),
});
