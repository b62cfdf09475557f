import { type AxisLetter, hasNoVerticalAxis, type Machine, verticalAxes } from '../model/machine.ts';
import { listed } from './figures.ts';

/** Hazards to people, one plain sentence or two each. Usual cautions of the trade; local codes and licensed practice stand above them. */
export const caution = {
  listens: 'This tool only listens. It cannot stop the machine. Keep your hand near the real emergency stop.',
  motorsOff: 'Motor and spindle power off, control power on, before a hand goes near a switch.',
  clothing: 'No gloves, loose sleeves or hair near screws, belts and racks.',
  fingers: 'Keep fingers out of the gap between the switch and what strikes it.',
  signalOnly:
    'Only the named small signal plug. Never pull a motor plug while its drive has power: it destroys the drive and can arc.',
  photograph: 'Photograph the plug in its place and tag it before you pull it.',
  mains:
    'Where mains wires (110 V and more) run in the same box, leave the box closed and ask a licensed electrician.',
  charge: 'Drives hold a charge after switching off: wait the time on their label.',
  wet: 'Dry a wet machine before you touch any plug.',
  allCores: 'Pull the whole plug: never lift the return core of a powered sensor alone.',
  statusNoProof: 'A changing status is no proof that power is gone. Look at the power itself.',
  meter:
    'Use a meter only if you are trained for this circuit: right range, insulated tips. Otherwise answer "not sure".',
  stayClear: 'Everyone out of reach of moving parts before power comes on and before a stop is unlatched.',
  noBridge: 'Never tape, wedge, hold in or bridge a switch.',
  readOnly: 'Only read the setting; change nothing now, and start no motion.',
  leaveIt:
    'Smell, heat, smoke, sparks, a tingle, or anything that moves by itself: switch off and leave it to a competent person.',
  licensed:
    'Mains, drives and the emergency-stop circuit itself belong to local code and licensed practice, not to this tool.',
  lateByTwo: 'Do not wait for this tool: what it says comes late, by two reports and more.',
  twoTerminals:
    'Only the two terminals named, only with motor power off. A link to a wrong terminal can short a supply.',
  linkOut: 'A link left in holds the switch for ever: the axis will not find its end.',
  yourControl: 'Look at the machine, not at this screen, while you use your own control.',
} as const;

export type Caution = keyof typeof caution;

/** An axis that hangs falls when its motor lets go. Nothing is said where the machine file shows that none hangs; where it leaves that open, it is. */
export function dropCautions(
  machine: Machine,
  axes: readonly AxisLetter[] = verticalAxes(machine),
): readonly string[] {
  if (axes.length > 1)
    return [
      `${listed(axes)}, as vertical axes, can drop when motor power goes. Prop them before anyone reaches under them.`,
    ];
  if (axes.length === 0 && hasNoVerticalAxis(machine)) return [];
  const which = axes.length === 0 ? 'A vertical axis' : `${listed(axes)}, as a vertical axis,`;
  return [`${which} can drop when motor power goes. Prop it before anyone reaches under it.`];
}

export const cautions = (...which: readonly Caution[]): readonly string[] =>
  which.map((each) => caution[each]);
