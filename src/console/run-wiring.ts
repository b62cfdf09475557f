import { seeded } from '../diagnose/circuit/random.ts';
import { compareWirings } from '../diagnose/fault-finding/compare.ts';
import { studyWiring } from '../diagnose/fault-finding/study.ts';
import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';
import { wiringNames } from '../model/wiring-names.ts';
import { renderComparison, renderStudy, type WiringFormat, wiringFormats } from '../report/wiring/render.ts';
import { wrapped } from '../report/wrapped.ts';
import { listed } from '../words/figures.ts';
import { wiringWords } from '../words/wiring/circuit-words.ts';
import { machineIn, textOfFile } from './read-machine.ts';
import { candidate, usualCandidates, type WiringFlags } from './wiring-candidates.ts';

/** Boards drawn from the tolerances; the same ones every time. */
const boards = 300;
const seed = 1;

/** What `wiring` shows: one wiring, several one after the other, or candidates side by side. */
export function wiringText(names: readonly string[], flags: WiringFlags): string {
  const format = formatIn(flags);
  const machine =
    flags.machine === undefined ? undefined : machineIn(textOfFile(flags.machine), flags.machine);
  const wanted = names.length > 0 ? names : flags.compare ? usualCandidates : [];
  if (wanted.length === 0) return wiringList();
  const studies = wanted.map((each) => studyWiring(candidate(each, flags, machine), seeded(seed), boards));
  if (flags.compare) return ended(renderComparison(compareWirings(studies), format));
  const [study, ...more] = studies;
  if (study === undefined || more.length > 0)
    throw new ToolError(
      'wrong-usage',
      'Several wirings are named.',
      'Add --compare to lay them side by side.',
    );
  return ended(renderStudy(study, format));
}

const wiringList = (): string =>
  wiringNames
    .flatMap((name) => wrapped(wiringWords[name], name.padEnd(32), ' '.repeat(32)))
    .map((line) => `${line}\n`)
    .join('');

const ended = (text: string): string => (text.endsWith('\n') ? text : `${text}\n`);

function formatIn({ format, json }: WiringFlags): WiringFormat {
  const found = wiringFormats.find((each) => each === (json ? 'json' : format));
  if (found) return found;
  throw new ToolError(
    'wrong-usage',
    `The format ${visible(format)} is not known.`,
    `There are ${listed(wiringFormats)}.`,
  );
}
