import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Bench, type BenchOptions } from '../../src/bench/bench.ts';
import { benchSource } from '../../src/bench/bench-source.ts';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { type HandsOptions, simulatedHands } from '../../src/bench/simulated-hands.ts';
import { type VirtualTime, virtualTime } from '../../src/bench/virtual-time.ts';
import type { Source } from '../../src/model/source.ts';
import { ms } from '../../src/model/units.ts';
import { type CommissionOptions, type CommissionOutcome, commission } from '../../src/session/commission.ts';
import type { Face, FaceEvent, Reply, ShownAsk } from '../../src/session/operator.ts';

export const temporaryFolder = (): string => mkdtempSync(join(tmpdir(), 'commissioned-'));
export const remove = (folder: string): void => rmSync(folder, { recursive: true, force: true });

/** Virtual time holds the thread; now and then what waits for a promise has its turn. */
const eventsATurn = 50_000;
/** What the wiring is tested by; tests of motion ask for more. */
export const wiringChecks = ['rest', 'press', 'open-wire', 'stop'] as const;
/** No session of the tests takes two hours. */
const longest = 7_200_000;

export interface SessionOptions {
  readonly folder: string;
  readonly hands?: HandsOptions;
  readonly session?: Partial<CommissionOptions>;
  /** Stands between the bench's port and the session. */
  readonly through?: (port: Source, time: VirtualTime) => Source;
  /** Sees every event before the hands do; returning true ends the session as a person would who closes the lid. */
  readonly stopAt?: (event: FaceEvent) => boolean;
  /** Says more than her hands do. */
  readonly alsoSays?: (event: FaceEvent, say: (reply: Reply) => void) => void;
}

export interface VirtualOptions extends SessionOptions {
  readonly bench?: BenchOptions;
}

export interface VirtualOutcome extends CommissionOutcome {
  readonly events: readonly FaceEvent[];
}

/** A bench in virtual time that stays as the person left it from one session to the next. */
export class Workplace {
  readonly time: VirtualTime;
  readonly bench: Bench;

  constructor(bench: Bench, time: VirtualTime) {
    this.bench = bench;
    this.time = time;
  }

  /** One session from opening the port to the written report; a minute costs a few milliseconds. */
  async session({
    folder,
    hands,
    session,
    through,
    stopAt,
    alsoSays,
  }: SessionOptions): Promise<VirtualOutcome> {
    const { bench, time } = this;
    const events: FaceEvent[] = [];
    let take: (reply: Reply) => void = () => {};
    const person = simulatedHands(
      bench,
      time,
      (id, answer, value) => take({ kind: 'answer', id, answer, ...(value !== undefined && { value }) }),
      hands,
    );
    const face: Face = {
      start: (given) => {
        take = given;
      },
      show: (event) => {
        if (event.kind !== 'reading') events.push(event);
        alsoSays?.(event, (reply) => take(reply));
        if (stopAt?.(event)) time.after(ms(0), () => take({ kind: 'gone' }));
        else if (event.kind === 'ask') person.asked(event.id, event.ask);
        else if (event.kind === 'danger') person.danger();
      },
      close: () => {},
    };
    const port = benchSource(bench, time);
    const source = through?.(port, time) ?? port;
    const over = { yet: false };
    const end = () => {
      over.yet = true;
    };
    const outcome = commission({
      source: {
        ...source,
        close: () => {
          end();
          return source.close();
        },
      },
      face,
      time,
      folder,
      resume: false,
      machineText: scenarioFile,
      checks: wiringChecks,
      presses: 3,
      restSeconds: 10,
      only: undefined,
      toolVersion: '0.0.0-test',
      startedUtc: '2026-01-02T03:04:05Z',
      ...session,
    });
    outcome.then(end, end);
    const latest = time.now() + longest;
    while (!over.yet) {
      await new Promise(setImmediate);
      let left = eventsATurn;
      time.run(() => over.yet || left-- <= 0);
      if (time.now() > latest) throw new Error('the session does not come to an end');
    }
    person.leave();
    return { ...(await outcome), events };
  }

  leave(): void {
    this.bench.shutDown();
  }
}

export const asksIn = ({ events }: VirtualOutcome): readonly ShownAsk[] =>
  events.filter((event) => event.kind === 'ask');

export function workplace(options: BenchOptions = {}): Workplace {
  const time = virtualTime();
  return new Workplace(new Bench(time, options), time);
}

/** A whole session on a bench of its own. */
export async function virtualSession({ bench, ...options }: VirtualOptions): Promise<VirtualOutcome> {
  const place = workplace(bench);
  const outcome = await place.session(options);
  place.leave();
  return outcome;
}

/** `check subject: status kind kind`, sorted. */
export const found = ({ facts }: Pick<CommissionOutcome, 'facts'>): readonly string[] =>
  facts.verdicts
    .map(
      ({ check, subject, status, findings }) =>
        `${check} ${subject}: ${[status, ...findings.map(({ kind }) => kind).sort()].join(' ')}`,
    )
    .sort();

/** `check subject: status evidence kind kind`, sorted: what a session that was broken off must come to all the same. */
export const judged = ({ facts }: Pick<CommissionOutcome, 'facts'>): readonly string[] =>
  facts.verdicts
    .map(
      ({ check, subject, status, evidence, findings }) =>
        `${check} ${subject}: ${[status, evidence, ...findings.map(({ kind }) => kind).sort()].join(' ')}`,
    )
    .sort();
