import type { Finding } from '../../model/finding.ts';
import { inputOf, type Subject, switchOf } from '../../model/machine.ts';
import type { Scene } from '../../model/procedure.ts';
import { answeringInput, type PressEvidence } from './press-evidence.ts';

/**
 * A plug pushed on one pin off: every switch of it that answers does so on the input the same number of places further along. Two
 * crossed wires go one forth and one back, so the two cannot be mistaken for each other. Subject -> finding.
 */
export function shiftedPlugs(
  evidence: readonly PressEvidence[],
  scene: Scene,
): ReadonlyMap<Subject, Finding> {
  const places = evidence.flatMap((item) => {
    const pressed = switchOf(scene.machine, item.subject);
    const connector = pressed && inputOf(scene.machine, pressed.input)?.connector;
    const by = pressed && answeringInput(item, pressed);
    if (!connector || !by) return [];
    return [
      {
        connector,
        subject: item.subject,
        by: scene.streamInputs.indexOf(by) - scene.streamInputs.indexOf(pressed.input),
      },
    ];
  });
  const found = new Map<Subject, Finding>();
  for (const connector of new Set(places.map((each) => each.connector))) {
    const pins = places.filter((each) => each.connector === connector);
    const [first] = pins;
    if (!first || pins.length < 2 || first.by === 0 || pins.some((each) => each.by !== first.by)) continue;
    for (const { subject } of pins) found.set(subject, { kind: 'shifted-plug', connector, by: first.by });
  }
  return found;
}
