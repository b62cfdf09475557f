import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { type Gesture, leftAt, RememberingBench } from './left-alone.ts';
import { briefly, twoSwitches } from './two-switches.ts';
import { judged, remove, temporaryFolder, Workplace } from './virtual-session.ts';

/** A whole session of the small machine, its two growing files, and what hands did meanwhile. */
export interface Scripted {
  readonly header: string;
  readonly machine: string;
  readonly capture: Buffer;
  readonly journal: Buffer;
  readonly gestures: readonly Gesture[];
  readonly judged: readonly string[];
  /** When it was over; ms. */
  readonly end: number;
}

export async function scriptedSession(): Promise<Scripted> {
  const folder = temporaryFolder();
  const time = virtualTime();
  const bench = new RememberingBench(time, twoSwitches);
  const place = new Workplace(bench, time);
  const outcome = await place.session({ folder, session: briefly });
  place.leave();
  const bytes = (name: string) => readFileSync(join(folder, name));
  const kept = {
    header: bytes('session.json').toString(),
    machine: bytes('machine.yaml').toString(),
    capture: bytes('capture.log'),
    journal: bytes('journal.ndjson'),
  };
  remove(folder);
  return { ...kept, gestures: bench.gestures, judged: judged(outcome), end: time.now() };
}

/** A folder with what is left of a session: both files cut to so many bytes. */
export function folderWith({
  header,
  machine,
  capture,
  journal,
}: Omit<Scripted, 'gestures' | 'judged' | 'end'>): string {
  const folder = temporaryFolder();
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'session.json'), header);
  writeFileSync(join(folder, 'machine.yaml'), machine);
  writeFileSync(join(folder, 'capture.log'), capture);
  writeFileSync(join(folder, 'journal.ndjson'), journal);
  return folder;
}

/** What the session comes to that is gone on with from cut files, at the machine as it was left at `moment`. */
export async function resumedFrom(
  session: Scripted,
  cut: { readonly capture: number; readonly journal: number; readonly moment: number },
): Promise<readonly string[]> {
  const folder = folderWith({
    ...session,
    capture: session.capture.subarray(0, cut.capture),
    journal: session.journal.subarray(0, cut.journal),
  });
  const place = leftAt(cut.moment, twoSwitches, session.gestures);
  try {
    return judged(await place.session({ folder, session: { ...briefly, resume: true } }));
  } finally {
    place.leave();
    remove(folder);
  }
}
