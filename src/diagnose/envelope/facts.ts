import type { EnvelopeEnd, EnvelopeFacts, PartExtent, WorkOrigin } from '../../model/envelope-facts.ts';
import { knownOnly } from '../../model/known-only.ts';
import { type Axis, allSwitches, type End } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { mm } from '../../model/units.ts';
import { type AxisLayout, roomNeeded, softMargin, usableTravel } from './layout.ts';
import { originOf, type WorkOffsets, workSystems } from './offsets.ts';
import type { ProgramExtents } from './program/read.ts';

/** Everything that bounds one axis, for a reader: in machine coordinates, with where each number comes from. Of a program, what is `placed`. */
export function envelopeFacts(
  axis: Axis,
  layout: AxisLayout,
  offsets: WorkOffsets,
  program: Pick<ProgramExtents, 'boxes' | 'usesToolLength'> | undefined,
  { machine }: Pick<Scene, 'machine'>,
): EnvelopeFacts {
  const { letter } = axis;
  const endOf = (end: End): EnvelopeEnd => {
    const { stop, trip } = layout.ends[end];
    const isDeclared = trip === axis.hard?.[end === 'positive' ? 1 : 0];
    const input = allSwitches(machine).find((each) => each.axis === letter && each.end === end)?.input;
    return {
      ...(stop !== undefined && { stop, stopFrom: 'told' }),
      ...(trip !== undefined && { trip, tripFrom: isDeclared ? 'configured' : 'commanded' }),
      ...(input !== undefined && { input }),
    };
  };
  return knownOnly({
    axis: letter,
    unit: axis.kind === 'rotary' ? 'degrees' : 'mm',
    ends: { negative: endOf('negative'), positive: endOf('positive') },
    homes: layout.homes,
    homeValue: layout.homeValue,
    backOff: layout.backOff,
    soft: layout.soft,
    softMargin: softMargin(layout),
    roomNeeded: roomNeeded(layout),
    usable: usableTravel(layout),
    origins: originsOf(letter, offsets),
    parts: program ? partsOf(letter, offsets, program) : [],
  });
}

const originsOf = (letter: Axis['letter'], offsets: WorkOffsets): readonly WorkOrigin[] =>
  workSystems.flatMap((system) => {
    const at = offsets.origins[system]?.[letter];
    const shift = offsets.shift[letter] || undefined;
    if (at === undefined) return [];
    const active = system === offsets.active;
    return [{ system, at: mm(at + (shift ?? 0)), active, ...(shift !== undefined && { shift }) }];
  });

const partsOf = (
  letter: Axis['letter'],
  offsets: WorkOffsets,
  { boxes, usesToolLength }: Pick<ProgramExtents, 'boxes' | 'usesToolLength'>,
): readonly PartExtent[] =>
  boxes.flatMap(({ system, axes }) => {
    const extent = axes[letter];
    const named = system === 'active' ? offsets.active : system;
    if (!extent) return [];
    const origin = originOf(offsets, system, letter, usesToolLength);
    const { lowLine, highLine } = extent;
    return [
      { system: named, low: mm(extent.low + origin), high: mm(extent.high + origin), lowLine, highLine },
    ];
  });
