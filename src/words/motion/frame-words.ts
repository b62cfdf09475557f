import type { AxisWay, FrameFacts } from '../../model/motion-facts.ts';
import { wayText } from './lengths.ts';

/** The frame that the true ways of the axes span, in plain words. */
export const frameWords = {
  true: 'The tool goes over the work the way each axis counts: a right-handed frame, determinant +1 (ISO 841). Parts come out as drawn.',
  turned:
    'The axes do not run where the machine file has them, but they still form a right-handed frame, determinant +1 (ISO 841). Parts come out right, lying turned on the table.',
  mirrored:
    'The axes form a left-handed frame, determinant −1. Parts come out as in a mirror: lettering reads backwards, arcs run the other way round, climb milling is conventional milling. Homing can work all the same. Put the direction of one axis right, and with it the end it homes to.',
  'too-few-axes':
    'The true way of fewer than two axes is known: whether the frame is right-handed or mirrored cannot be said.',
  'same-axis-twice':
    'Two axes were seen to move the tool the same way. One answer is wrong, or a motor plug is: no frame follows.',
  'leaves-the-plane':
    'An axis moved the tool along an axis that was not watched itself. Watch that one too: no frame follows yet.',
} as const satisfies Record<FrameFacts['says'], string>;

export const frameEvidence = {
  told: 'a person said so',
  repeated: 'a proved switch tripped there again and again',
} as const satisfies Record<AxisWay['evidence'], string>;

/** "X positive moves the tool the way X should count, negative": commanded way and true one. */
export const wayWords = ({ axis, sign }: AxisWay): string => `${axis} ${wayText(sign)}`;
