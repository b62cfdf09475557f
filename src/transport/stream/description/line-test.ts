import type { LinesMeant } from '../../../model/stream-description.ts';

/** What stands in a line, by name, and how many values it holds. */
export interface LineTexts {
  readonly texts: ReadonlyMap<string, string>;
  readonly count: number;
  /** The name of the first value. */
  readonly begins: string | undefined;
}

/** Whether a line is one of those meant; made once for each way of choosing lines, asked for every line. */
export function lineTest({ count, begins, has, values = {} }: LinesMeant): (line: LineTexts) => boolean {
  const wanted = Object.entries(values);
  return (line) => {
    if (count !== undefined && line.count !== count) return false;
    if (begins !== undefined && line.begins !== begins) return false;
    if (has !== undefined && !line.texts.has(has)) return false;
    for (const [path, text] of wanted) if (line.texts.get(path) !== text) return false;
    return true;
  };
}
