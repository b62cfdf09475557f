import type { Machine } from '../model/machine.ts';
import type { Face } from '../session/operator.ts';
import { endWithoutTerminal } from './lost-terminal.ts';
import type { FaceName } from './options.ts';
import type { SidePanel } from './screen.ts';

export interface FaceWishes {
  readonly machine: Machine;
  /** False with --no-color or NO_COLOR (https://no-color.org). */
  readonly color: boolean;
  readonly panel?: SidePanel;
}

/** Makes the face a person or a program meets; each is loaded only where it is used. */
export async function makeFace(name: FaceName, { machine, color, panel }: FaceWishes): Promise<Face> {
  const { stdin: input, stdout: output } = process;
  endWithoutTerminal();
  if (name === 'json') {
    const { JsonFace } = await import('./faces/json-face.ts');
    return new JsonFace(input, output);
  }
  if (name === 'lines') {
    const { LinesFace } = await import('./faces/lines-face.ts');
    return new LinesFace({ input, output, machine, bell: output.isTTY === true });
  }
  const [{ ScreenFace }, { glyphsFor }] = await Promise.all([
    import('./screen.ts'),
    import('./painting/glyphs.ts'),
  ]);
  return new ScreenFace({ machine, glyphs: glyphsFor(process.env), color, ...(panel && { panel }) });
}

/** Whether a full screen can be drawn: both ends a terminal, and one that can move its cursor. */
export const isTerminal = (): boolean =>
  process.stdin.isTTY === true && process.stdout.isTTY === true && process.env['TERM'] !== 'dumb';

export const wantsColor = (option: boolean): boolean => option && !process.env['NO_COLOR'];
