import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Bench, type BenchOptions } from '../../src/bench/bench.ts';
import { benchSource } from '../../src/bench/bench-source.ts';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { type HandsOptions, simulatedHands } from '../../src/bench/simulated-hands.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { registered } from '../../src/diagnose/checks/registry.ts';
import { type CommissionOptions, type CommissionOutcome, commission } from '../../src/session/commission.ts';
import type { Face, FaceEvent, Reply } from '../../src/session/operator.ts';

export const temporaryFolder = (): string => mkdtempSync(join(tmpdir(), 'commissioned-'));
export const remove = (folder: string): void => rmSync(folder, { recursive: true, force: true });

export interface VirtualOptions {
  readonly bench?: BenchOptions;
  readonly hands?: HandsOptions;
  readonly folder: string;
  readonly session?: Partial<CommissionOptions>;
  /** Sees every event before the hands do; returning true ends the session as a person would. */
  readonly stopAt?: (event: FaceEvent) => boolean;
}

export interface VirtualOutcome extends CommissionOutcome {
  readonly events: readonly FaceEvent[];
}

/** A whole session on the bench with simulated hands, in virtual time: a minute costs a few milliseconds. */
export async function virtualSession({
  bench,
  hands,
  folder,
  session,
  stopAt,
}: VirtualOptions): Promise<VirtualOutcome> {
  const time = virtualTime();
  const machine = new Bench(time, bench ?? {});
  const events: FaceEvent[] = [];
  let take: (reply: Reply) => void = () => {};
  const person = simulatedHands(machine, time, (id, answer) => take({ kind: 'answer', id, answer }), hands);
  const face: Face = {
    start: (given) => {
      take = given;
    },
    show: (event) => {
      if (event.kind !== 'reading') events.push(event);
      if (stopAt?.(event)) time.after(0 as never, () => take({ kind: 'gone' }));
      else if (event.kind === 'ask') person.asked(event.id, event.ask);
    },
    close: () => {},
  };
  let over = false;
  const port = benchSource(machine, time);
  const close = async () => {
    over = true;
    await port.close();
  };
  const outcome = commission({
    source: { ...port, close },
    face,
    time,
    folder,
    resume: false,
    machineText: scenarioFile,
    checks: registered,
    presses: 3,
    restSeconds: 10,
    only: undefined,
    toolVersion: '0.0.0-test',
    startedUtc: '2026-01-02T03:04:05Z',
    ...session,
  }).finally(() => {
    over = true;
  });
  for (let quiet = 0; !over && quiet < 100; quiet++) {
    await new Promise((resolve) => setImmediate(resolve));
    time.run(() => over);
  }
  person.leave();
  machine.shutDown();
  return { ...(await outcome), events };
}

/** `check subject: status kind kind`, sorted. */
export const found = ({ facts }: CommissionOutcome): readonly string[] =>
  facts.verdicts
    .map(
      ({ check, subject, status, findings }) =>
        `${check} ${subject}: ${[status, ...findings.map(({ kind }) => kind).sort()].join(' ')}`,
    )
    .sort();
