/** A scenario of our own that uses every entry of the format at least once. */
export const engraver = `machine: Kitchen-table engraver
units: mm
stand: in front of the drawer
polarity: each
inputs:
  x-left:
    duty: [home, limit]
    axis: X
    end: negative
    side: left
    place: behind the left foot of the bridge
    contact: normally closed
    sensor: contact
    circuit: { kind: contact to ground, supply: 5 V, pull-up: 4.7 kohm, filter: 100 nF }
    polarity: active when open
    terminal: 007
    connector: P2
    reach: controller only
    overtravel: 1.2 mm
  bridge:
    joined: series
    terminal: D4
    polarity: active when open
    contact: normally closed
    switches:
      front: { axis: Y, end: negative, duty: [home, limit], side: front }
      back: { axis: Y, end: positive, duty: [limit], contact: normally open, motor: 2 }
  lid: { duty: [door], voltage: unknown, circuit: { kind: contact to supply, supply: 24 V } }
  plate: { duty: [probe], voltage: 3300 mV }
  stop-told: { duty: [stop] }
axes:
  X: { travel: 300, homes: negative, positive: right, moves: tool, soft: [1, 297], hard: [-2, 302.5],
       home value: 0, back-off: 2 mm, approach speed: 10 mm/s, rapid: 2.4 m/min, acceleration: 0.2 m/s2,
       reaction: 0.008 s, step: 12.5 um, home order: 2 }
  Y: { motors: 2 }
  A: { travel: 360, soft: [-180, 180 deg], rapid: 60 deg/s }
`;
