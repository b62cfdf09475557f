/** A machine file to begin with: it reads without a problem as it stands, and says beside every entry what it is for. */
export const starterFile = (): string => `# Machine file for tellwire.
# Only machine, axes and the duty of each input must stand. What you leave out counts as unknown, and the report says so.
# Write what is true of the machine, not what should be: a wrong entry here hides a wrong wire.
machine: My machine
units: mm                        # or: inch. A bare length below is in this unit
stand: at the front, where the work is loaded   # left and right below are seen from here
polarity: unknown                # each (every input has its own setting in the controller), one for all, unknown

inputs:                          # names as the controller reports them: lower-case letters, digits, hyphens, 24 at most
  x-home:
    duty: [home, limit]          # one or more of: home, limit, probe, door, stop
    axis: X
    # end: negative              # the end of the axis it really stands at: negative, positive
    # side: left                 # where you see it from where you stand: left, right, front, back, top, bottom
    # place: left end of the long axis   # your own words; you are asked to press the switch by them
    contact: unknown             # normally closed, normally open, unknown
    # sensor: contact            # contact, npn, pnp, two-wire, hall, optical, unknown
    # circuit: { kind: contact to ground, supply: 5 V, pull-up: 10 kohm }
    # polarity: active when open # the setting in the controller as you know it: active when open, active when closed
    # terminal: IN1              # as printed on the board
    # connector: J4              # inputs of one connector drop together when it is pulled
    voltage: unknown             # as in 5 V, 24 V. Unknown or above 30 V: you are never asked to unplug it. Left out: you are first asked what plug it is
    # reach: by hand             # where the plug can be reached: by hand, controller only, never
    # overtravel: 2.5 mm         # how far it may be driven past its trip

  # Several switches on one input: each is asked for and judged by itself.
  # y-limits:
  #   joined: series             # or: parallel
  #   switches:
  #     y-min: { axis: Y, end: negative, duty: [home, limit], contact: normally closed, place: front }
  #     y-max: { axis: Y, end: positive, duty: [limit], contact: normally closed, place: back }

  # The emergency stop is a hard-wired circuit that cuts power by itself. This is only the contact that tells the controller.
  # stop:
  #   duty: [stop]

axes:                            # letters of ISO 841; a positive axis moves the tool over the work in the positive direction
  X:
    # travel: 420
    # homes: negative            # the end it homes to
    # positive: right            # where the tool goes over the work when X counts up
    # moves: tool                # or: table
    # soft: [2, 415]             # soft limits in machine coordinates
    # hard: [-3, 424]            # where the limit switches trip
    # home value: 0
    # back-off: 3 mm
    # approach speed: 800 mm/min
    # rapid: 3000 mm/min
    # acceleration: 250 mm/s2
    # reaction: 10 ms            # from the input to the start of braking
    # step: 0.0125 mm
    # home order: 2
  Y:
  Z:
    # kind: linear               # or: rotary, counted in degrees
    # motors: 1
`;
