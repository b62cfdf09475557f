import { secondsText } from '../../words/figures.ts';
import type { Glyphs } from './glyphs.ts';
import type { AskOnScreen } from './screen-state.ts';

/** The instruction in two parts, to be drawn large. */
export interface Headline {
  readonly what: string;
  readonly where: string;
}

/** "Press: left end (2 of 3)" becomes what to do, with one square a round, filled where it is done, and where to do it. */
export function headline({ short, where = '', shown }: AskOnScreen, glyphs: Glyphs): Headline {
  const { ask } = shown;
  if (ask.action === 'hands-off') return { what: 'Hands off', where: secondsText(ask.seconds) };
  const squares =
    ask.action === 'press' && ask.rounds > 1
      ? ` ${glyphs.active.repeat(ask.round - 1)}${glyphs.quiet.repeat(ask.rounds - ask.round + 1)}`
      : '';
  const what = /^(.+?)[:?](?= |$)/.exec(short)?.[0] ?? short;
  return { what: `${what.replace(/:$/, '')}${squares}`, where: what === short ? '' : where };
}
