import type { Reading } from '../model/reading.ts';
import type { Source } from '../model/source.ts';
import { ToolError } from '../model/tool-error.ts';
import { ms } from '../model/units.ts';
import { exitCodeFor } from '../report/exit-code.ts';
import { Watch, type WatchEvents } from '../session/watch.ts';
import { openPort } from '../transport/open-port.ts';
import { realTime } from '../transport/real-time.ts';
import { watchWords } from '../words/watch-words.ts';
import { benchAlone } from './bench-wiring.ts';
import { isTerminal, wantsColor } from './choose-face.ts';
import { jsonWatch, linesWatch, type WatchFace, type WatchKeys } from './faces/watch-face.ts';
import { letPass } from './let-pass.ts';
import { countOption, faceOption, portOption, timeOption } from './options.ts';
import { descriptionAt } from './read-stream.ts';
import { untilEnded } from './until-ended.ts';
import { screenWatch } from './watch-screen.ts';

export interface WatchFlags {
  readonly port?: string;
  readonly stream?: string;
  readonly baud: string;
  readonly operator?: string;
  readonly soak?: string;
  readonly fault?: readonly string[];
  readonly allowRequest?: string;
  readonly speak?: string;
  readonly color: boolean;
}

/** Watches until it is told to end, or the soak is over; then a verdict an input and their exit code. */
export async function runWatch(flags: WatchFlags): Promise<0 | 1 | 2> {
  const soak = flags.soak === undefined ? undefined : timeOption('soak', flags.soak, 1, 360_000);
  const name = faceOption(flags.operator, isTerminal());
  const { stream } = flags;
  const description = stream === undefined ? undefined : descriptionAt(stream);
  const request = description?.request;
  const source = sourceOf(flags);
  await letPass(request, flags.allowRequest, name);
  let face: WatchFace | undefined;
  let takeReading: (reading: Reading) => void = () => {};
  let end = () => {};
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  const events: WatchEvents = {
    heard: (change) => face?.heard(change),
    reading: (reading) => takeReading(reading),
    lost: (why) => face?.note('lost', watchWords.lost(why)),
    back: () => face?.note('back', watchWords.back),
  };
  const watch = new Watch(source, realTime, events, description);
  let marks = 0;
  const still = () => {
    watch.standsStill();
    if (request) face?.note('asked', watchWords.standsStill);
  };
  const keys: WatchKeys = { mark: (said) => face?.mark(++marks, watch.now, said), still, end };
  const watched = { port: source.port, soak, request };
  try {
    await watch.open();
    if (name === 'screen') {
      const screen = screenWatch({ ...watched, watch, color: wantsColor(flags.color), keys });
      takeReading = screen.reading;
      face = screen;
    } else face = name === 'json' ? jsonWatch(watched, keys) : linesWatch(watched, keys);
    const stop = soak === undefined ? () => {} : realTime.after(ms(soak * 1000), end);
    const early = untilEnded().then(() => true);
    const wasStopped = await Promise.race([early, ended.then(() => false)]);
    stop();
    const verdicts = soak === undefined ? [] : watch.soak();
    face.close();
    const written = request && watchWords.wasWritten(watch.requests, request);
    face.finished(watch.facts(), verdicts, written);
    return soak === undefined ? 0 : exitCodeFor(verdicts, wasStopped);
  } finally {
    face?.close();
    await watch.close();
  }
}

function sourceOf({ port: named, baud, fault = [], speak }: WatchFlags): Source {
  const port = portOption(named);
  if (port === 'bench') return benchAlone(fault, speak);
  if (fault.length > 0)
    throw new ToolError('wrong-usage', 'Faults are planted on the bench only.', 'Leave --fault out.');
  return openPort(port, { baud: countOption('baud', baud, 50, 20_000_000), time: realTime });
}
