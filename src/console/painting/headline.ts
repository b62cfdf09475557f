import type { Glyphs } from './glyphs.ts';
import type { AskOnScreen } from './screen-state.ts';

/** The instruction in two parts, to be drawn large. */
export interface Headline {
  readonly what: string;
  readonly where: string;
}

/** "Press: left end (2 of 3)" becomes what to do with one square a round, filled where it is done, and where. */
export function headline({ short, shown }: AskOnScreen, glyphs: Glyphs): Headline {
  const { ask } = shown;
  const isCounted = ask.action === 'press' && ask.rounds > 1;
  const said = short.replace(/ \(\d+ of \d+\)$/, '');
  const [, what = said, where = ''] = /^(.{3,40}?[:?]) (.+)$/.exec(said) ?? [];
  const squares = isCounted
    ? ` ${glyphs.active.repeat(ask.round - 1)}${glyphs.quiet.repeat(ask.rounds - ask.round + 1)}`
    : '';
  return { what: `${what.replace(/:$/, '')}${squares}`, where };
}
