import type { Axis } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { seekRoles } from '../seek/roles.ts';
import { switchesAsked } from './switches-asked.ts';

/** Axes with a switch to seek; the spindle axis first, then in the order the file tells. */
export function axesToSeek(scene: Scene): readonly Axis[] {
  const asked = switchesAsked(scene);
  const axes = scene.machine.axes.filter(
    ({ letter }) =>
      asked.some((each) => each.axis === letter && each.duty.includes('home')) &&
      (seekRoles(scene.machine, letter, scene.known.answering)?.home.length ?? 0) > 0,
  );
  const rank = ({ letter, homes, homeOrder }: Axis) =>
    letter === 'Z' && homes === 'positive' ? -1 : (homeOrder ?? Number.MAX_SAFE_INTEGER);
  return [...axes].sort((a, b) => rank(a) - rank(b));
}

/** Axes that no switch of the file homes though they should: those that are told to home, and all where none can. Said, or the check would be silent about them. */
export function axesWithoutHome(scene: Scene): readonly Axis[] {
  if (scene.only) return [];
  const sought = axesToSeek(scene);
  return scene.machine.axes.filter(
    (axis) =>
      !sought.includes(axis) && axis.kind === 'linear' && (sought.length === 0 || axis.homes !== undefined),
  );
}
