import { namesToTry } from '../../model/nearest.ts';
import { ToolError } from '../../model/tool-error.ts';
import type { Shape } from './shape.ts';
import { namedShapes } from './shapes.ts';

/** The bench's option for a shape by name; none where none is named. Throws ToolError `wrong-usage`. */
export function spoken(name: string | undefined): { readonly speak?: Shape } {
  if (name === undefined) return {};
  const speak = Object.hasOwn(namedShapes, name) ? namedShapes[name] : undefined;
  if (speak) return { speak };
  const allowed = namesToTry(name, Object.keys(namedShapes), '`tellwire bench --shapes` lists them all.');
  throw new ToolError('wrong-usage', `There is no shape ${name}.`, allowed);
}
