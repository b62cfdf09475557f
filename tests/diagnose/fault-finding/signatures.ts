import type { FaultName } from '../../../src/model/fault-names.ts';

/**
 * What a worked electrician expects to read (common practice, no source), written down before the model: for each fault the input at
 * rest, pressed by hand, pressed by the machine, let go, unplugged at the controller, unplugged at the switch, linked at the
 * controller, linked at the switch. O open, C conducting, X between the thresholds or held by nothing, F jumping; several letters
 * where the values decide. Before the stroke a normally open contact, after it a normally closed one.
 */
export const healthy = ['O/C', 'C/O', 'C/O', 'O/C', 'O', 'O', 'C', 'C'] as const;

type Row = readonly [string, string, string, string, string, string, string, string];

const dead: Row = ['O', 'O', 'O', 'O', 'O', 'O', 'C', 'C'];
const deadCable: Row = ['O', 'O', 'O', 'O', 'O', 'O', 'C', 'O'];
const held: Row = ['C', 'C', 'C', 'C', 'O', 'C', 'C', 'C'];
const stuck: Row = ['C', 'C', 'C', 'C', 'O', 'O', 'C', 'C'];
const allOpen: Row = ['O', 'O', 'O', 'O', 'O', 'O', 'O', 'O'];
const allConducting: Row = ['C', 'C', 'C', 'C', 'C', 'C', 'C', 'C'];
const none: Row = healthy;
const operated: Row = ['C/O', 'C/O', 'C/O', 'C/O', 'O', 'O', 'C', 'C'];
const missed: Row = ['O/C', 'C/O', 'O/C', 'O/C', 'O', 'O', 'C', 'C'];
const crossed: Row = ['O/C', 'O/C', 'O/C', 'O/C', 'O/C', 'O/C', 'C', 'O/C'];

export const signatures: Readonly<Record<FaultName, Row>> = {
  'signal-core-open': deadCable,
  // The link at a sensor's own + does not need the broken 0 V core.
  'common-core-open': ['O', 'O', 'O', 'O', 'O', 'O', 'C', 'OC'],
  'signal-to-0-v': held,
  'fed-signal-to-0-v': deadCable,
  'signal-to-plus': deadCable,
  'fed-signal-to-plus': held,
  'signals-together': ['O/C', 'C', 'C', 'O/C', 'O', 'O/C', 'C', 'C'],
  'contact-welded': stuck,
  'contact-filmed': ['O/CFO', 'OF/O', 'OF/O', 'O/F', 'O', 'O', 'C', 'C'],
  'contact-never-makes': dead,
  'common-blade-unused': dead,
  'wrong-blade': ['C/O', 'O/C', 'O/C', 'C/O', 'O', 'O', 'C', 'C'],
  'dog-misses': missed,
  'held-operated': operated,
  'dog-rides-past': ['O/C', 'C/O', 'F', 'O/C', 'O', 'O', 'C', 'C'],
  'actuator-sticks': ['O/C', 'C/O', 'C/O', 'C/O', 'O', 'O', 'C', 'C'],
  'plug-half-mated': ['O/CF', 'F/OF', 'F/OF', 'OF', 'O', 'O', 'C', 'F'],
  'loose-clamp': ['O', 'OF', 'OF', 'O', 'O', 'O', 'C', 'OF'],
  'wrong-terminal': deadCable,
  'inputs-crossed': crossed,
  'plug-shifted': deadCable,
  'ends-swapped': crossed,
  // A module that brings its own pull-up is not missed until it is unplugged; a sensor's leakage may lift a line that nothing holds.
  'pull-resistor-missing': ['XFOC/C', 'C/XFOC', 'C/XFOC', 'XFOC/C', 'XF', 'XF', 'C', 'C'],
  'pull-resistor-weak': none,
  'coupler-light-open': allOpen,
  'coupler-output-shorted': allConducting,
  'coupler-reversed': allOpen,
  'coupler-common-missing': allOpen,
  // A dead module's own pull-up hangs on its dead supply and draws the line down with it.
  'sensor-supply-reversed': ['OX', 'OX', 'OX', 'OX', 'O', 'O', 'C', 'C'],
  'pnp-for-npn': ['OX', 'O', 'O', 'OX', 'O', 'O', 'C', 'C'],
  'npn-for-pnp': dead,
  'sensor-supply-missing': ['OX', 'OX', 'OX', 'OX', 'O', 'O', 'C', 'CO'],
  // A bare optical pair still works; a divider or an input for 24 V may be in doubt even at the face.
  'sensor-supply-low': ['O/CF', 'CX/O', 'OFC/OF', 'O/CF', 'O', 'O', 'CX', 'CX'],
  'gap-too-large': missed,
  'chip-on-face': operated,
  'contact-bridged': ['CF/C', 'C/CF', 'C/CF', 'CF/C', 'O', 'O', 'C', 'C'],
  moisture: ['XF/C', 'C/XF', 'C/XF', 'XF/C', 'O', 'XF', 'C', 'C'],
  'spindle-noise': none,
  'motor-cable-noise': none,
  'shared-return': none,
  'shield-wrong': none,
  'core-breaks-when-flexed': none,
  'polarity-inverted': none,
  'polarity-for-all': none,
  'filter-too-long': none,
  'filter-too-short': none,
  'filter-wrong-value': none,
  'pin-dead-open': allOpen,
  'pin-dead-conducting': allConducting,
  'input-not-enabled': none,
  'shared-input-misread': none,
  'one-leg-open': dead,
  'one-contact-bypassed': stuck,
  'bracket-loose': none,
  'magnet-wrong': ['O/C', 'O/C', 'O/C', 'O/C', 'O', 'O', 'C', 'C'],
  'optics-blind': ['CFO', 'CFO', 'CFO', 'CFO', 'O', 'O', 'C', 'C'],
  'contact-block-off': stuck,
  'stop-is-status-only': none,
  'clip-off': dead,
  'plate-bonded': stuck,
  // Linked to a + whose 0 V is not shared, a terminal is linked to nothing.
  'returns-not-joined': ['O', 'O', 'O', 'O', 'O', 'O', 'CO', 'O'],
  'wrong-field-voltage': ['OX', 'OX', 'OX', 'OX', 'O', 'O', 'OXC', 'OXC'],
  'leakage-holds-on': ['CX/C', 'C/CX', 'C/CX', 'CX/C', 'O', 'O', 'C', 'C'],
  'drop-too-big': ['O/OX', 'OX/O', 'OX/O', 'O/OX', 'O', 'O', 'CX', 'CX'],
  'back-feed': ['OXCF', 'OXCF', 'OXCF', 'OXCF', 'O', 'OXCF', 'C', 'C'],
};
