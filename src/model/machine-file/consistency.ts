import { isRotary } from './build.ts';
import type { AxisPart, InputPart, Part, Parts } from './parts.ts';
import { foundText } from './plain.ts';
import { type Path, quoted, type Wrong } from './problem.ts';
import { inBaseUnit, isAngle, measures } from './quantity.ts';
import type { SharedFields, SwitchFields } from './shape.ts';
import { entryOf } from './tree.ts';

type Say = (wrong: Wrong) => void;

/** What no field alone can show: entries that must stand together, and entries that contradict each other. */
export function sayContradictions(parts: Parts, say: Say): void {
  for (const input of parts.inputs) {
    if (input.kind === 'single') {
      sayMissingDuty(input, undefined, say);
      sayWrongMotor(input.fields, input.path, parts.axes, say);
      continue;
    }
    if (input.switches.length === 0 && entryOf(input.tree, 'switches') === undefined)
      say({
        path: [...input.path, 'switches'],
        found: 'nothing',
        allowed: 'the switches that share the input, by name',
        tryNext: 'add `switches`, or take `joined` out',
      });
    for (const each of input.switches) {
      sayMissingDuty(each, input, say);
      sayWrongMotor(
        each.fields && { ...pick(input.fields?.axis), ...each.fields },
        each.path,
        parts.axes,
        say,
      );
    }
  }
  sayUnlikePolarity(parts, say);
  for (const axis of parts.axes) sayWrongAxis(axis, parts.top?.units === 'inch', say);
}

const pick = (axis: SharedFields['axis']) => (axis === undefined ? {} : { axis });

function sayMissingDuty(part: Part<unknown>, input: InputPart | undefined, say: Say): void {
  const stands = (each: Part<unknown>) => {
    const entry = entryOf(each.tree, 'duty');
    return entry !== undefined && entry.value.kind !== 'nothing';
  };
  if (part.tree.kind === 'text' || part.tree.kind === 'list') return;
  if (stands(part) || (input && stands(input))) return;
  say({
    path: [...part.path, 'duty'],
    offset: part.at,
    found: 'nothing',
    allowed: 'a list of home, limit, probe, door, stop',
    tryNext: 'add `duty: [limit]`, or what it is for',
  });
}

function sayWrongMotor(
  fields: SwitchFields | undefined,
  path: Path,
  axes: readonly AxisPart[],
  say: Say,
): void {
  const axis = axes.find((each) => each.name === fields?.axis)?.fields;
  if (fields?.motor !== undefined && axis?.motors !== undefined && fields.motor > axis.motors)
    say({
      path: [...path, 'motor'],
      found: `motor ${fields.motor}`,
      allowed: `1 to ${axis.motors}, as ${fields.axis} says`,
      tryNext: `correct it here or at \`axes\`, ${fields.axis}`,
    });
}

/** One setting for all inputs cannot be told in two ways. */
function sayUnlikePolarity(parts: Parts, say: Say): void {
  if (parts.top?.polarity !== 'one for all') return;
  const told = parts.inputs.filter((input) => (input.fields?.polarity ?? 'unknown') !== 'unknown');
  const first = told[0];
  for (const input of told) {
    if (input.fields?.polarity === first?.fields?.polarity) continue;
    say({
      path: [...input.path, 'polarity'],
      found: quoted(String(input.fields?.polarity)),
      allowed: `${first?.fields?.polarity}, as ${first?.name} says: \`polarity: one for all\` is one setting`,
      tryNext: 'write `polarity: each` at the top, or the same here',
    });
  }
}

function sayWrongAxis(axis: AxisPart, inches: boolean, say: Say): void {
  const { fields, path } = axis;
  if (fields === undefined) return;
  const rotary = isRotary(axis.name, fields);
  for (const name of ['soft', 'hard'] as const) {
    const bare = inches && !rotary ? 25.4 : 1;
    const [low, high] = (fields[name] ?? []).map((end) => inBaseUnit(measures.length, end, bare));
    if (low !== undefined && high !== undefined && low >= high)
      say({
        path: [...path, name],
        found: `[${fields[name]?.join(', ')}]`,
        allowed: 'two lengths, the lower first',
        tryNext: low === high ? 'give both ends' : `write [${fields[name]?.toReversed().join(', ')}]`,
      });
  }
  for (const { key, value } of axis.tree.kind === 'map' ? axis.tree.entries : []) {
    const written =
      value.kind === 'list' ? value.items.map(foundText) : value.kind === 'text' ? [value.text] : [];
    if (!measured.has(key) || !written.some((text) => /[a-z°]/i.test(text) && isAngle(text) !== rotary))
      continue;
    say({
      path: [...path, key],
      found: quoted(written.join(', ')),
      allowed: rotary ? 'degrees: a rotary axis turns' : 'a unit of length: a linear axis does not turn',
      tryNext: 'correct the unit, or say `kind:`',
    });
  }
}

const measured = new Set([
  'travel',
  'soft',
  'hard',
  'home value',
  'back-off',
  'approach speed',
  'rapid',
  'acceleration',
  'step',
]);
