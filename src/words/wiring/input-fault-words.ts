import type { FaultEntry } from './fault-entry.ts';

export const inputFaultWords = {
  'pull-resistor-missing': {
    title: 'No pull-up or pull-down',
    what: 'Nothing holds the open line: it wanders and follows a hand.',
    fix: 'Switch the pull-up on, or add 1 to 4.7 kohm.',
  },
  'pull-resistor-weak': {
    title: 'Pull-up too weak for the cable',
    what: 'Some tens of kilohms hold a long line: whatever runs beside it couples in.',
    fix: '1 to 2.2 kohm, or an isolated 24 V input; shielded cable; a normally closed contact.',
  },
  'coupler-light-open': {
    title: 'Optocoupler’s light burnt out',
    what: 'No current flows into the input although the full voltage stands on it.',
    fix: 'Another channel or another optocoupler, after the cause is found.',
  },
  'coupler-output-shorted': {
    title: 'Optocoupler’s output stuck on',
    what: 'The input reads conducting with nothing on its terminal.',
    fix: 'Another channel or another optocoupler.',
  },
  'coupler-reversed': {
    title: 'Optocoupler wired backwards',
    what: 'The current would have to flow against the light; it can destroy it.',
    fix: 'Exchange the two wires, and check that the light has survived.',
  },
  'coupler-common-missing': {
    title: 'Common of the optocouplers missing',
    what: 'The shared end of a group of inputs hangs in the air or on a blown fuse: the whole group is dead.',
    fix: 'Strap the common to its rail; check the fuse.',
  },
  'filter-wrong-value': {
    title: 'Filter a hundred times too slow',
    what: 'The capacitor at the input delays one edge by tens of milliseconds: short trips are lost.',
    fix: 'Fit the right capacitor.',
    look: 'The terminal’s voltage creeps after letting go.',
  },
  'pin-dead-open': {
    title: 'Controller’s pin dead, reads open',
    what: 'The terminal’s voltage changes as it should, the report does not.',
    fix: 'Find what overloaded it, then use another input.',
  },
  'pin-dead-conducting': {
    title: 'Controller’s pin dead, reads conducting',
    what: 'The terminal’s voltage is right, the report shows conducting for ever.',
    fix: 'Find what overloaded it, then use another input.',
  },
  'sensor-supply-reversed': {
    title: 'Sensor’s supply reversed',
    what: 'The sensor is dark: + and 0 V are exchanged at it.',
    fix: 'Exchange them, and test whether the sensor has survived.',
  },
  'pnp-for-npn': {
    title: 'PNP sensor where an NPN belongs',
    what: 'The sensor puts its supply on an input that waits to be pulled down; its lamp works, the pin may be damaged.',
    fix: 'An NPN sensor, or an isolated input or a level converter.',
  },
  'npn-for-pnp': {
    title: 'NPN sensor where a PNP belongs',
    what: 'The sensor joins to 0 V what is on 0 V already; its lamp works, nothing else does.',
    fix: 'A PNP sensor, or an input that hangs on +.',
  },
  'sensor-supply-missing': {
    title: 'Sensor has no supply',
    what: 'The + wire, its fuse or its supply is gone: the sensor is dark.',
    fix: 'Check fuse, plug and supply.',
  },
  'sensor-supply-low': {
    title: 'Sensor’s supply too low',
    what: 'The supply sags towards what the sensor just needs: it works at the face and not at its distance.',
    fix: 'The right supply, and a thicker feed.',
  },
  'returns-not-joined': {
    title: '0 V of two supplies not joined',
    what: 'The switch or sensor works against its own 0 V, which the controller does not share: nothing flows.',
    fix: 'Join the two 0 V at one point, or use an isolated input as it is meant.',
  },
  'wrong-field-voltage': {
    title: 'Wrong field voltage',
    what: 'The supply is not the one the input and its series resistor were made for.',
    fix: 'The right supply, or the right series resistor.',
  },
  'leakage-holds-on': {
    title: 'Sensor’s leakage holds the input on',
    what: 'The current a two-wire sensor takes when off is more than the input ignores.',
    fix: 'A bleed of 1 to 2.2 kohm, a type 2 or 3 input, or a three-wire sensor.',
  },
  'drop-too-big': {
    title: 'Sensor’s drop leaves too little current',
    what: 'A two-wire sensor keeps up to 8 V for itself; on a low supply the input gets too little.',
    fix: '24 V, or a three-wire sensor.',
  },
  'back-feed': {
    title: 'Fed back through another load',
    what: 'A lamp or another box, now and then without power, pulls on the same wire: voltages stand in the middle and change when it is switched.',
    fix: 'A diode for each channel, or a common supply.',
  },
  'spindle-noise': {
    title: 'Spindle drive or arc couples in',
    what: 'Bursts from the spindle’s drive come in over the cable.',
    fix: 'Other route, shield on at the cabinet, filter, 24 V with a normally closed contact.',
  },
  'motor-cable-noise': {
    title: 'Motor cable couples in',
    what: 'The switching of a motor’s current comes in over the cable while its axis moves.',
    fix: 'At least 100 mm from motor cables; cross them at right angles.',
  },
  'shared-return': {
    title: 'Return shared with motor current',
    what: 'Motor current in the same 0 V wire lifts it by up to some volts: several inputs jump together.',
    fix: 'One star point for 0 V, and a return of its own for motors.',
  },
  'shield-wrong': {
    title: 'Shield missing, floating, or used as a return',
    what: 'The shield does not take the disturbance away, or brings it in.',
    fix: 'Connect it at the cabinet end only, all round, and never as a return.',
  },
  'polarity-inverted': {
    title: 'Polarity setting the wrong way round',
    what: 'The wiring is right and the controller takes it for the opposite.',
    fix: 'Change the setting, then press and unplug again: with a broken wire it would read healthy for ever.',
    look: 'The terminal’s voltage is right, the report says the opposite.',
  },
  'polarity-for-all': {
    title: 'One polarity setting for unlike switches',
    what: 'Normally open and normally closed switches share one setting: some read upside down.',
    fix: 'Make all of them normally closed, or use a setting for each input.',
    look: 'Some inputs are right, some read the opposite.',
  },
  'filter-too-long': {
    title: 'Input filter too long',
    what: 'The controller waits longer than a short trip lasts.',
    fix: '2 to 5 ms.',
    look: 'A tap of a twentieth of a second is missing in the stream.',
  },
  'filter-too-short': {
    title: 'No input filter',
    what: 'Nothing hides the bounce of the contact, nor a spike.',
    fix: '2 to 5 ms in the controller, or a resistor and a capacitor.',
    look: 'One press shows several edges.',
  },
  'input-not-enabled': {
    title: 'Input not enabled or given another duty',
    what: 'The voltage changes and the controller makes nothing of it.',
    fix: 'Assign and enable it as the controller’s manual says.',
  },
  'shared-input-misread': {
    title: 'Shared input taken for one switch',
    what: 'Several switches answer with one bit; someone took it for a single one.',
    fix: 'Write it down, or give each switch its own input.',
    look: 'Press each in turn: all move the same bit.',
  },
  'stop-is-status-only': {
    title: 'Stop button wired to the status input alone',
    what: 'The controller sees the button and the power stays on.',
    fix: 'The removal of power must be designed by a licensed person; no input replaces it.',
    look: 'Press it and see whether the drives lose power: knob free, lamp out, meter at zero.',
  },
} as const satisfies Record<string, FaultEntry>;
