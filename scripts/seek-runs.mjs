import { homingPlan, seeded, simulate } from './simulated-seek.mjs';

/** One machine in five hundred: speeds, steps, report rates, flicker, jitter and losses as small machines and their streams have them. */
export function machineFor(seed) {
  const random = seeded(seed * 7919 + 13);
  const pick = (list) => list[Math.floor(random() * list.length)];
  const within = (low, high) => low + random() * (high - low);
  const step = pick([0.00125, 0.005, 0.0125, 0.025, 0.1]);
  const period = pick([7, 10, 20, 50, 100, 200]);
  const acceleration = pick([50, 100, 250, 500, 1500]);
  // Fast enough to be of use, slow enough to stop within two millimetres of its trip.
  const approach = within(2, Math.min(50, Math.sqrt(2 * acceleration * 2)));
  return {
    seed,
    step,
    approach,
    slow: within(0.4, Math.min(3, approach)),
    backOff: within(3, 5),
    acceleration,
    period,
    jitter: within(0, 0.4),
    loss: within(0, 0.2),
    dither: pick([0, 0.5, 1]),
    strike: pick([0, 0.01, 0.05]),
    toward: pick([1, -1]),
    distance: within(5, 40),
    start: within(-100, 100),
    // Long enough that some reports of rest are heard before it sets off.
    rest: within(Math.max(300, period * 8), 3000),
  };
}

/** The stream of one homing, the commanded way right or wrong; wrong, it runs until somebody would have hit the stop. */
export function seekOf(machine, rightWay) {
  const { toward, distance, start } = machine;
  const way = rightWay ? toward : -toward;
  const plan = rightWay
    ? homingPlan({ ...machine, way, input: 'home', most: 200, value: 0 })
    : [
        { wait: machine.rest },
        { activity: 'homing', way, speed: machine.approach, most: distance },
        { wait: 3000 },
      ];
  const edge = start + toward * distance;
  const switches = {
    home: { actuates: edge, frees: edge - toward * 0.4, outwards: toward },
    other: { actuates: start - toward * 500, outwards: -toward },
  };
  return { ...simulate({ ...machine, plan, stands: start, switches }), from: start, way };
}

export const expectationFor = (machine) => ({
  axis: 'X',
  toward: machine.toward,
  inputs: ['home'],
  others: [{ input: 'other' }],
  step: machine.step,
  gridKnown: true,
  acceleration: machine.acceleration,
  reaction: 5,
  rest: {},
});

/** Feeds `runs` seeks of both kinds to the watch; delays count the reports heard after the true motion passed two steps. */
export function measureSeeks(SeekWatch, runs) {
  const wrongWay = [];
  const rightWay = [];
  for (let seed = 1; seed <= runs; seed++) {
    const machine = machineFor(seed);
    wrongWay.push(wrongWayRun(SeekWatch, machine));
    rightWay.push({ seed, alarms: alarmsOf(SeekWatch, machine, seekOf(machine, true).readings) });
  }
  return { wrongWay, rightWay };
}

function alarmsOf(SeekWatch, machine, readings) {
  const watch = new SeekWatch(expectationFor(machine));
  return readings.flatMap((reading, heard) => watch.feed(reading).map((alarm) => ({ ...alarm, heard })));
}

function wrongWayRun(SeekWatch, machine) {
  const { readings, truth, taken, from } = seekOf(machine, false);
  const alarm = alarmsOf(SeekWatch, machine, readings).find((each) => each.kind === 'heads-away');
  const passed = truth.find(({ position }) => Math.abs(position - from) >= 2 * machine.step);
  const passedAt = passed ? taken.findIndex((time) => time >= passed.at) : -1;
  if (!alarm || passedAt < 0) return { seed: machine.seed, delay: undefined, travelled: undefined };
  return {
    seed: machine.seed,
    // The first report heard after it passed is report 1.
    delay: alarm.heard - passedAt + 1,
    travelled: Math.abs(alarm.position - from),
  };
}
