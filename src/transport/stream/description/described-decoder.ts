import type { Reading, StatusReading } from '../../../model/reading.ts';
import type { StreamDescription } from '../../../model/stream-description.ts';
import type { Millis } from '../../../model/units.ts';
import type { Decoder } from '../decoder.ts';
import { longestLine, takeApart } from '../shapes/fields.ts';
import { agreeing } from './agreeing.ts';
import { compiled } from './compiled.ts';
import { reportUnderWay } from './report-under-way.ts';

/** Decodes a stream as its description says. Such a stream has no clock of its own that is known: `at` is when the line arrived. */
export function describedDecoder(description: StreamDescription): Decoder {
  const inputs = description.inputs.map(({ name }) => name);
  const axes = description.axes.map(({ letter }) => letter);
  const readLine = compiled(description);
  const report = reportUnderWay(description);
  const believed = agreeing(description.agree);
  let latest: StatusReading | undefined;
  let segment = 0;
  let declared = false;

  const status = (arrived: Millis, states: ReturnType<typeof report.take>[number]): StatusReading => ({
    kind: 'status',
    arrived,
    at: states.arrived,
    segment,
    lost: 0,
    inputs,
    axes,
    activity: states.activity ?? '?',
    levels: states.levels,
    active: states.active,
    positions: states.positions,
  });

  return {
    decode({ arrived, text, cut }) {
      if (cut > 0 || text.length >= longestLine) return [{ kind: 'unreadable', arrived, why: 'too-long' }];
      const found = readLine(takeApart(text));
      if (found === undefined) return [];
      if (found === 'wrong') return [{ kind: 'unreadable', arrived, why: 'wrong-number' }];
      const out: Reading[] = [];
      if (!declared) {
        declared = true;
        out.push({ kind: 'declared', arrived, segment, units: 'mm', axes, inputs });
      }
      for (const states of report.take(found, arrived)) {
        latest = status(arrived, states);
        out.push(...believed.take(latest));
      }
      return out;
    },
    gap(arrived, why) {
      const last = believed.end();
      report.reset();
      latest = undefined;
      declared = false;
      segment++;
      return [...last, { kind: 'gap', arrived, segment, why }];
    },
    get latest() {
      return latest;
    },
    get heard() {
      return declared;
    },
    get declared() {
      return declared;
    },
  };
}
