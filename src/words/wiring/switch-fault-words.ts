import type { FaultEntry } from './fault-entry.ts';

export const switchFaultWords = {
  'contact-welded': {
    title: 'Contact stuck closed',
    what: 'The contact is welded or stuck and never opens.',
    fix: 'Replace the switch, and find what overloaded it.',
  },
  'contact-filmed': {
    title: 'Contact dirty or filmed',
    what: 'A film puts 100 ohm to 100 kohm into the closed contact, and jumps when it is worked.',
    fix: 'A sealed switch with gold contacts, or at least 5 mA through a silver one.',
  },
  'contact-never-makes': {
    title: 'Contact never closes',
    what: 'A broken spring or a lost contact leaves the switch open for good.',
    fix: 'Replace the switch.',
  },
  'common-blade-unused': {
    title: 'Wired across the two outer blades',
    what: 'The two wires are on the normally open and the normally closed blade; the common one is empty.',
    fix: 'Move one wire to the common blade.',
  },
  'wrong-blade': {
    title: 'Wired to the other blade',
    what: 'The contact is the other kind than meant. If someone then turns the polarity setting, a broken wire goes unnoticed for ever.',
    fix: 'Move the wire to the other blade, then check the polarity setting.',
  },
  'contact-bridged': {
    title: 'Coolant or chips bridge the contact',
    what: 'Something wet or metallic joins the two blades, from a kilohm to some tens.',
    fix: 'Dry and clean it; a sealed switch, or another place.',
  },
  'one-leg-open': {
    title: 'One leg of several is open',
    what: 'This switch’s own branch is broken; the others on the same input still work.',
    fix: 'Repair the branch.',
  },
  'one-contact-bypassed': {
    title: 'One contact of several is bypassed',
    what: 'This switch can no longer open the line; the others on the same input still can.',
    fix: 'Take the bridge out, or replace the switch.',
  },
  'contact-block-off': {
    title: 'Contact block fell off the button',
    what: 'The button moves and the block behind it does not: the contact stays closed.',
    fix: 'Refit it, or fit a block that opens when it comes off. Treat the machine as unsafe until then.',
  },
  'clip-off': {
    title: 'Clip not on, or the tool does not conduct',
    what: 'Plate and tool touch and no current flows: no clip, a coating, an insulated tool.',
    fix: 'Clip on bare metal, and touch plate to tool by hand before every probing.',
  },
  'plate-bonded': {
    title: 'Plate already on 0 V',
    what: 'The plate lies on metal that is on 0 V: the input reads touched all the time.',
    fix: 'Insulate the plate, or use an isolated input.',
  },
  'dog-misses': {
    title: 'Dog misses the switch',
    what: 'A finger works the switch, the machine’s own dog passes beside it or stops short.',
    fix: 'Move the dog: half a millimetre to a millimetre past the trip, never to the end of the lever.',
    look: 'Feel with a gauge whether the dog reaches the switch at the end of travel.',
  },
  'held-operated': {
    title: 'Lever bent or held in',
    what: 'The switch is worked although nothing is there.',
    fix: 'Straighten or replace the lever, and see that it is not overrun.',
    look: 'The lever is visibly in while the machine stands clear of it.',
  },
  'dog-rides-past': {
    title: 'Dog rides past the switch',
    what: 'The dog is shorter than the overrun: the switch trips and lets go again while the axis still moves on.',
    fix: 'A dog at least as long as the stopping distance.',
    look: 'With drives off, push the axis slowly: it trips, then lets go before the hard stop.',
  },
  'actuator-sticks': {
    title: 'Actuator sticks in',
    what: 'After a press the contact stays as it was until it is tapped.',
    fix: 'Clean or replace it; fit a boot or a wiper.',
    look: 'After letting go the input stays pressed; a tap frees it.',
  },
  'gap-too-large': {
    title: 'Gap too large or target too small',
    what: 'A steel rule at the face works the sensor, the machine’s own target does not come close enough.',
    fix: 'Closer, with a steel flag at least as wide as the sensor.',
    look: 'Measure the gap: above 0.8 of the rated distance nothing is assured (IEC 60947-5-2).',
  },
  'chip-on-face': {
    title: 'Steel chip on the sensor’s face',
    what: 'A chip works the sensor as the target would.',
    fix: 'Wipe it; a guard, or a face that looks sideways or down.',
    look: 'Its lamp is lit with nothing there, and goes out when wiped.',
  },
  'bracket-loose': {
    title: 'Switch or dog loose',
    what: 'The input is sound; the place where it trips wanders.',
    fix: 'Bolt and dowel it on a stiff bracket.',
    look: 'A dial indicator on the bracket moves when you push it; trip points scatter.',
  },
  'magnet-wrong': {
    title: 'Magnet missing, wrong pole, or a latching part',
    what: 'The Hall switch never sees the magnet it needs.',
    fix: 'Turn the magnet, or replace the module by one that is not latching.',
    look: 'Hold a known magnet to it with either face: the output never changes.',
  },
  'optics-blind': {
    title: 'Slot dirty, lit from outside, or its light dead',
    what: 'The receiver sees its light now and then, or not at all.',
    fix: 'Clean it, shade it, use an opaque flag.',
    look: 'Compare a black card in the slot with a free slot.',
  },
} as const satisfies Record<string, FaultEntry>;
