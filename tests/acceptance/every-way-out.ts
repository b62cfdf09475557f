import { PassThrough } from 'node:stream';
import { JsonFace } from '../../src/console/faces/json-face.ts';
import { LinesFace } from '../../src/console/faces/lines-face.ts';
import { letterGlyphs } from '../../src/console/painting/glyphs.ts';
import { textOf } from '../../src/console/painting/row.ts';
import { screenRows } from '../../src/console/painting/screen-model.ts';
import { ScreenState } from '../../src/console/painting/screen-state.ts';
import type { SessionFacts } from '../../src/model/session-facts.ts';
import { buildRecord } from '../../src/report/build-record.ts';
import { formatNames, formats } from '../../src/report/formats.ts';
import { inputMap } from '../../src/report/input-map.ts';
import { mapFormatNames, mapFormats } from '../../src/report/map-formats.ts';
import { mapText } from '../../src/report/map-text.ts';
import { mapPage } from '../../src/report/proof.ts';
import { summaryText } from '../../src/report/summary-text.ts';
import type { Face } from '../../src/session/operator.ts';
import type { VirtualOutcome } from '../session/virtual-session.ts';

type Ways = ReadonlyMap<string, string>;

/** The record of a session in every form it is written in. */
export function everyFormat(facts: SessionFacts): Ways {
  const record = buildRecord(facts);
  return new Map([
    ...formatNames.map((name) => [`report ${name}`, formats[name](record).text] as const),
    ['summary', summaryText(record)],
  ]);
}

/** The input map of a session in every form it is written in. */
export function everyMap(facts: SessionFacts): Ways {
  const { verdicts } = buildRecord(facts);
  const { machine, started } = facts;
  const rows = inputMap(machine, facts.verdicts);
  const page = mapPage({ machine: machine.name, from: 'this session', rows, verdicts, started });
  return new Map([
    ...mapFormatNames.map((name) => [`map ${name}`, mapFormats[name](page)] as const),
    ['map', mapText(page)],
  ]);
}

/** All that a session showed, as each face shows it: JSON lines, plain lines, and every page of a screen. */
export function everyFace({ events, facts: { machine } }: VirtualOutcome): Ways {
  const said = (make: (output: PassThrough) => Face): string => {
    const output = new PassThrough({ highWaterMark: 1 << 27 });
    const face = make(output);
    face.start(() => {});
    for (const event of events) face.show(event);
    void face.close();
    return String(output.read() ?? '');
  };
  return new Map([
    ['json', said((output) => new JsonFace(new PassThrough(), output))],
    ['lines', said((output) => new LinesFace({ input: new PassThrough(), output, machine, bell: false }))],
    ['screen', screenPages(events, machine).join('\f')],
  ]);
}

function screenPages(events: VirtualOutcome['events'], machine: SessionFacts['machine']): readonly string[] {
  const state = new ScreenState(machine);
  return events.map((event) => {
    state.take(event, 0);
    const rows = screenRows(state, { width: 132, height: 50, glyphs: letterGlyphs, now: 0 });
    return rows.map(textOf).join('\n');
  });
}
