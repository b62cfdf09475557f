import type { Reading } from '../model/reading.ts';
import { ms } from '../model/units.ts';
import type { Watch } from '../session/watch.ts';
import { timeText } from '../words/figures.ts';
import { watchWords } from '../words/watch-words.ts';
import { tellEnd, type Watched, type WatchFace, type WatchKeys } from './faces/watch-face.ts';
import { glyphsFor } from './painting/glyphs.ts';
import { LiveInputs } from './painting/live-inputs.ts';
import { watchRows } from './painting/watch-rows.ts';
import { showPage } from './screen.ts';

export interface ScreenWatchParts extends Watched {
  readonly watch: Watch;
  readonly color: boolean;
  readonly keys: WatchKeys;
}

/** The watch on the whole screen; what came out of it is printed when the screen has gone. */
export function screenWatch(parts: ScreenWatchParts): WatchFace & { reading(reading: Reading): void } {
  const { port, watch, soak, request, color, keys } = parts;
  const hasRequest = request !== undefined;
  const inputs = new LiveInputs();
  const said: string[] = [];
  let places: readonly string[] = [];
  const say = (text: string) => {
    said.push(text);
    if (said.length > 100) said.shift();
  };
  const left = () => ms(Math.max(0, (soak ?? 0) * 1000 - watch.now));
  const restore = showPage({
    glyphs: glyphsFor(process.env),
    color,
    rows: (canvas) => {
      const told = soak === undefined ? undefined : `${watchWords.soakBegins(left())}`;
      return watchRows({ port, inputs, facts: watch.facts(), said, places, soak: told, hasRequest }, canvas);
    },
    key(typed) {
      if (typed === 'm') keys.mark('');
      if (typed === 's') keys.still();
      if (typed === 'q') keys.end();
    },
    gone: () => keys.end(),
  });
  let isOpen = true;
  return {
    heard: () => {},
    reading(reading) {
      inputs.take(reading);
      if (reading.kind !== 'status') return;
      places = reading.axes.map((axis, i) => `${axis} ${reading.positions[i]?.toFixed(3) ?? 'not reported'}`);
    },
    mark: (number, at, text) => say(watchWords.mark(number, at, text)),
    note: (_topic, text) => say(`${text} (${timeText(watch.now)})`),
    finished(facts, verdicts, written) {
      for (const line of said) process.stdout.write(`${line}\n`);
      tellEnd(facts, verdicts, written);
    },
    close() {
      if (isOpen) restore();
      isOpen = false;
    },
  };
}
