import { escapeBytes } from '../model/visible.ts';
import { CaptureFile } from '../session/capture-file.ts';
import { compiled } from '../transport/stream/description/compiled.ts';
import { readDescription } from '../transport/stream/description/read.ts';
import { takeApart } from '../transport/stream/shapes/fields.ts';
import { counted } from '../words/figures.ts';
import { problemBlocks } from './problem-blocks.ts';
import { textOfFile } from './read-machine.ts';
import { showJson, showLines } from './show.ts';

const examples = 5;

/** 0 the description is right; 1 it is wrong. With a capture: which of its lines are read, and how the others come apart. */
export function checkedStream(file: string, capture: string | undefined, json: boolean): 0 | 1 {
  const { description, problems = [] } = readDescription(textOfFile(file));
  if (!description) {
    if (json) showJson(problems);
    else process.stdout.write(problemBlocks(problems, file));
    return 1;
  }
  const { inputs, axes } = description;
  if (capture === undefined) {
    if (json) showJson([]);
    else
      showLines([
        `${file} is right: ${counted(inputs.length, 'input')}, ${counted(axes.length, 'axis', 'axes')}.`,
      ]);
    return 0;
  }
  const readLine = compiled(description);
  const seen = { read: 0, wrong: 0, other: 0 };
  const shown: Record<keyof typeof seen, string[]> = { read: [], wrong: [], other: [] };
  for (const line of new CaptureFile(capture).lines()) {
    if (line.kind !== 'rx') continue;
    const { text } = line;
    const apart = takeApart(text);
    const said = readLine(apart);
    const kind = said === undefined ? 'other' : said === 'wrong' ? 'wrong' : 'read';
    seen[kind]++;
    if (shown[kind].length < examples)
      shown[kind].push(
        `  ${escapeBytes(text)}`,
        `    ${apart.fields.map((each) => `${each.path} ${each.text}`).join('; ')}`,
      );
  }
  if (json) showJson(seen);
  else
    showLines([
      `Read: ${counted(seen.read, 'line')}.`,
      ...shown.read,
      `Meant, but not readable: ${counted(seen.wrong, 'line')}.`,
      ...shown.wrong,
      `Not described: ${counted(seen.other, 'line')}.`,
      ...shown.other,
    ]);
  return 0;
}
