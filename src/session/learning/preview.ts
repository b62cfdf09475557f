import type { Line, StatusReading } from '../../model/reading.ts';
import type { StreamDescription } from '../../model/stream-description.ts';
import { describedDecoder } from '../../transport/stream/description/described-decoder.ts';

/** The last report among some lines, as a description reads it. */
export function previewOf(description: StreamDescription, lines: readonly Line[]): readonly string[] {
  const decoder = describedDecoder(description);
  let last: StatusReading | undefined;
  for (const line of lines)
    for (const reading of decoder.decode(line)) if (reading.kind === 'status') last = reading;
  if (!last) return [];
  const { inputs, axes, levels, active, positions, activity } = last;
  const states = inputs.map((input, i) => `${input} ${stateOf(levels[i], active[i])}`);
  const at = axes.map(
    (letter, i) => `${letter} ${positions[i] === undefined ? 'unknown' : positions[i].toFixed(3)}`,
  );
  return [...states, ...at, ...(activity === '?' ? [] : [activity])];
}

function stateOf(level: string | undefined, active: string | undefined): string {
  if (active === '1') return 'active';
  if (active === '0') return 'inactive';
  if (level === 'H') return 'high';
  return level === 'L' ? 'low' : 'unknown';
}
