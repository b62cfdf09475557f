/**
 * A machine in made time, for measuring the seek watch and for tests: it carries out a plan, works switches, and reports what its controller
 * would: commanded positions on their grid, late, lost, and flickering by a rounding. It shares nothing with the code it measures.
 */

/** Random numbers that a seed repeats (mulberry32, T. Ettinger, public domain). */
export function seeded(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const tick = 0.5;

/**
 * Carries out `plan` and returns { readings, truth, taken }: the reports heard, the true commanded position every half millisecond, and
 * when each report was taken.
 * Plan parts: { wait: ms }, { by: mm, speed }, { way: 1 | -1, speed, until: input, most: mm }, { set: mm }, { activity }.
 */
export function simulate(setup) {
  const {
    plan,
    axis = 'X',
    others = {},
    switches = {},
    start = 0,
    stands = 0,
    sense = 1,
    driven = true,
    acceleration = Infinity,
    step = 0.0125,
    period = 20,
    jitter = 0,
    loss = 0,
    dither = 0,
    strike = 0,
    seed = 1,
    levelsOnly = false,
  } = setup;
  const random = seeded(seed);
  const inputs = Object.keys(switches);
  const operated = Object.fromEntries(inputs.map((name) => [name, false]));
  const world = { time: 0, commanded: start, physical: stands, speed: 0, activity: 'still' };
  const readings = [];
  const truth = [];
  const taken = [];
  let due = random() * period;
  let lost = 0;
  let struck;
  work();

  function work() {
    for (const name of inputs) {
      const { actuates, frees = actuates, outwards = 1, when } = switches[name];
      if (when) operated[name] = when(world);
      else if ((world.physical - actuates) * outwards >= 0) operated[name] = true;
      else if ((frees - world.physical) * outwards >= 0) operated[name] = false;
    }
  }

  function pass(by) {
    world.time += tick;
    world.commanded += by;
    if (driven) world.physical += by * sense;
    work();
    truth.push({ at: world.time, position: world.commanded });
    if (world.time < due) return;
    due += period;
    const stamped = world.time + (random() - 0.5) * 2 * jitter * period;
    if (random() < loss) lost++;
    else {
      taken.push(world.time);
      report(stamped);
    }
  }

  function report(stamped) {
    const at = Math.max(stamped, (readings.at(-1)?.at ?? -1) + 0.001);
    const flicker = (random() - 0.5) * dither * step;
    // A burst of noise turns one input over for one report, never for two in a row.
    struck =
      struck === undefined && random() < strike ? inputs[Math.floor(random() * inputs.length)] : undefined;
    const shown = (name) => operated[name] !== (name === struck);
    const position = Math.round((world.commanded + flicker) / step) * step;
    readings.push({
      kind: 'status',
      arrived: at + 1000,
      at,
      segment: 1,
      lost,
      inputs,
      axes: [axis, ...Object.keys(others)],
      activity: world.activity,
      levels: inputs.map((name) => (shown(name) ? 'H' : 'L')),
      active: inputs.map((name) => (levelsOnly ? '?' : shown(name) ? '1' : '0')),
      positions: [Number(position.toFixed(6)), ...Object.values(others)],
    });
    lost = 0;
  }

  /** One tick of speeding up or down towards `wanted` mm/s; returns the way gone. */
  function drive(wanted) {
    const most = (acceleration * tick) / 1000;
    const change = wanted - world.speed;
    world.speed = Math.abs(change) <= most ? wanted : world.speed + Math.sign(change) * most;
    const by = (world.speed * tick) / 1000;
    pass(by);
    return by;
  }

  function brake() {
    while (world.speed !== 0) drive(0);
  }

  for (const part of plan) {
    if (part.activity !== undefined) world.activity = part.activity;
    if (part.set !== undefined) world.commanded = part.set;
    if (part.wait !== undefined) for (let t = 0; t < part.wait; t += tick) pass(0);
    if (part.by !== undefined) {
      const way = Math.sign(part.by);
      let left = Math.abs(part.by);
      while (left > 1e-9) {
        const brakes = world.speed ** 2 / (2 * acceleration);
        const wanted = left <= brakes ? Math.sqrt(2 * acceleration * left) : part.speed;
        const reach = Math.min(wanted, (left * 1000) / tick);
        left -= Math.abs(drive(way * Math.max(reach, Math.min(0.01, (left * 1000) / tick))));
      }
      world.speed = 0;
    }
    if (part.way !== undefined) {
      const from = world.commanded;
      while (
        !(part.until && operated[part.until]) &&
        Math.abs(world.commanded - from) < (part.most ?? Infinity)
      )
        drive(part.way * part.speed);
      brake();
    }
  }
  return { readings, truth, taken, stands: world.physical, commanded: world.commanded };
}

/** The plan of a homing: rest, approach, back off, slow approach, release, zero, rest. */
export function homingPlan({
  way,
  input,
  approach = 15,
  slow = 1,
  backOff = 2,
  most = 400,
  rest = 500,
  value = 0,
}) {
  return [
    { wait: rest },
    { activity: 'homing', way, speed: approach, until: input, most },
    { by: -way * backOff, speed: approach },
    { way, speed: slow, until: input, most: backOff * 2 },
    { by: -way * backOff, speed: slow },
    { set: value, activity: 'still' },
    { wait: rest },
  ];
}
