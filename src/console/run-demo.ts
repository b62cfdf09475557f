import { resolve } from 'node:path';
import { buildRecord } from '../report/build-record.ts';
import { summaryText } from '../report/summary-text.ts';
import { type CommissionOutcome, commission } from '../session/commission.ts';
import type { Face } from '../session/operator.ts';
import {
  benchForPerson,
  benchInVirtualTime,
  benchMachineText,
  mustBeFound,
  planted,
} from './bench-wiring.ts';
import { isTerminal, wantsColor } from './choose-face.ts';
import { compared } from './compare-planted.ts';
import { freshFolder } from './fresh-folder.ts';
import { goOnHint } from './go-on.ts';
import { faceOption } from './options.ts';
import { machineIn } from './read-machine.ts';
import { usualScope } from './scope.ts';
import { showLines } from './show.ts';
import { endedBySignals } from './stop-signals.ts';
import { toolVersion } from './version.ts';

export interface DemoWishes {
  readonly handsOn: boolean;
  readonly out: string | undefined;
  /** In place of the planted ones: what was planted is then no longer what must be found. */
  readonly faults: readonly string[] | undefined;
  readonly color: boolean;
}

/** Commissions the built-in bench. 0 exactly when what was found is what was planted; with hands of one's own, the session's exit code. */
export async function runDemo(wishes: DemoWishes): Promise<0 | 1 | 2> {
  const faults = wishes.faults ?? planted;
  const machine = machineIn(benchMachineText, 'the bench');
  const startedUtc = new Date().toISOString();
  const shared = {
    folder: wishes.out ?? freshFolder(startedUtc, machine),
    resume: false,
    machineText: benchMachineText,
    ...usualScope,
    toolVersion: toolVersion(),
    startedUtc,
  };
  if (!wishes.handsOn) {
    const { source, time, face, pass } = benchInVirtualTime(faults);
    return judged(await pass(commission({ ...shared, source, time, face })), faults, wishes.color);
  }
  faceOption('screen', isTerminal());
  const { source, time, face } = await benchForPerson(faults, 'screen', {
    machine,
    color: wantsColor(wishes.color),
  });
  const outcome = await closing(endedBySignals(face), (open) =>
    commission({ ...shared, source, time, face: open }),
  );
  judged(outcome, faults, wishes.color);
  return outcome.exit;
}

/** The terminal is put back in order whatever happens. */
async function closing<Result>(face: Face, work: (face: Face) => Promise<Result>): Promise<Result> {
  try {
    return await work(face);
  } finally {
    await face.close();
  }
}

function judged(
  { facts, folder, report }: CommissionOutcome,
  faults: readonly string[],
  color: boolean,
): 0 | 1 {
  process.stdout.write(summaryText(buildRecord(facts)));
  showLines(['', `Session folder: ${resolve(folder)}`, `Report: ${resolve(report)}`, '']);
  if (facts.stopped) {
    showLines([
      'Stopped before the end: there is nothing to compare with what was planted.',
      ...goOnHint(facts, 'commission', { folder, port: 'bench' }, { fault: faults, color }),
    ]);
    return 1;
  }
  const { equal, lines } = compared(facts.verdicts, mustBeFound);
  showLines([
    `Planted in the bench: ${faults.join(' ')}. What was found beside what the planted faults must give:`,
    ...lines,
  ]);
  return equal ? 0 : 1;
}
