import type { Danger } from '../model/procedure.ts';
import type { Millis } from '../model/units.ts';
import { dangerWords } from '../words/danger-words.ts';
import type { ConductParts } from './conduct-parts.ts';

/** Written down, then shown and sounded at once. The person acts; the tool cannot. */
export function tellDanger({ recorder, face }: ConductParts, id: number, danger: Danger, now: Millis): void {
  const told = { ...danger, id, text: dangerWords(danger) };
  recorder.note<'danger'>({ kind: 'danger', ...told }, now);
  face.show({ kind: 'danger', ...told });
}
