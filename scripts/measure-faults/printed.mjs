// What measure-faults.mjs measures, in the order it prints it.

const percent = (share) => `${(100 * share).toFixed(1)} %`;
const figure = (number, digits = 1) => number.toFixed(digits).padStart(6);
const mean = (numbers) => numbers.reduce((sum, each) => sum + each, 0) / Math.max(numbers.length, 1);

export async function printed(world, { machines: count, seed, short, missed }) {
  const [measure, { byNgspice }, { judged }] = await Promise.all(['measure', 'solvers', 'judged'].map(world));
  const { Inquiry } = await import('../../dist/diagnose/troubleshooting/inquiry.js');
  const { prospectFor, chosen } = await world('prospects');
  const { hasNgspice } = await import('../../tests/ngspice/run.ts');
  const { byTable, tableMachines } = await world('table');
  let networks = 0;
  const solver = hasNgspice ? byNgspice : byTable();
  const solve = (questions) => {
    networks += questions.reduce((sum, each) => sum + each.networks.length, 0);
    return solver(questions);
  };
  const machines = hasNgspice ? measure.machinesFrom(seed, count) : tableMachines(Math.min(count, 60));
  if (!hasNgspice) console.log('ngspice is missing: the machines of the table that it wrote, and no more.');
  let mendedToo = 0;
  const runs = [
    ['without mistakes', 0],
    [`${percent(measure.mistaken)} of the answers wrong or missing`, measure.mistaken],
  ].map(([name, mistakes]) => {
    const first = measure.searched(machines, chosen, mistakes, solve);
    told(name, first, measure);
    const again = hasNgspice ? measure.searchedAgain(first, mistakes, solve) : [];
    if (mistakes === 0) mendedToo = again.filter((each) => judged(each) === 'named').length / first.length;
    if (again.length > 0)
      console.log(
        `  of these ${again.length}, one mended and searched again: the other named ${percent(measure.shareOf(again, 'named'))}`,
      );
    if (missed) listed(first, judged);
    return first;
  });
  const list = measure.searched(machines, measure.guideOf(machines, seed, short ? 120 : 600), 0, solve);
  told('a fixed checklist, without mistakes', list, measure);
  const minutes = (all) => measure.meanOf(all, (each) => each.minutes);
  const ratio = minutes(runs[0]) / minutes(list);
  console.log(`minutes beside the checklist's: ${percent(ratio)}`);

  const problems = measure.optimumCompared(machines.slice(0, short ? 12 : 96), seed);
  const beyond = problems.map(({ least, chosen: own }) => own / least);
  const overall = mean(problems.map((each) => each.chosen)) / mean(problems.map((each) => each.least));
  console.log(
    `\nexact optimum on ${problems.length} small problems (6 causes, 6 deeds): ${overall.toFixed(3)} times its minutes on average, ${Math.max(...beyond).toFixed(2)} times at most`,
  );

  const decisions = [...new Set(machines.map(prospectFor))].slice(0, 24).map((prospect) => {
    const inquiry = Inquiry.begin(prospect);
    return Math.min(
      ...Array.from({ length: 3 }, () => {
        const began = performance.now();
        inquiry.next();
        return performance.now() - began;
      }),
    );
  });
  const slowest = Math.max(...decisions);
  console.log(
    `one decision with everything still possible: ${slowest.toFixed(0)} ms at most, over ${decisions.length} inputs`,
  );
  console.log(`networks solved by ngspice: ${networks}`);
  const named = measure.shareOf(runs[0], 'named') + mendedToo;
  const aims = [
    [
      `99 % named without mistakes, of two faults at once or one after the other: ${percent(named)}`,
      named >= 0.99,
    ],
    ['at most 1.1 times the optimum', overall <= 1.1],
    ["at most half the checklist's minutes", ratio <= 0.5],
    ['a decision in less than 100 ms', slowest < 100],
  ];
  for (const [aim, reached] of aims) console.log(`${reached ? 'reached' : 'MISSED '}  ${aim}`);
  // Few machines say little about a share: the short form only shows that everything runs.
  return short || aims.every(([, reached]) => reached);
}

function told(name, all, { shareOf, meanOf }) {
  const sizes = all.map(({ conclusion }) => conclusion.causes.length);
  const sized = (low, high = low) =>
    percent(sizes.filter((each) => each >= low && each <= high).length / all.length);
  console.log(`\n${name}: ${all.length} machines`);
  console.log(
    `  true fault named ${percent(shareOf(all, 'named'))}, one of two faults ${percent(shareOf(all, 'in part'))}, wrong ${percent(shareOf(all, 'wrong'))}`,
  );
  for (const [what, of] of [
    ['nothing wrong', 0],
    ['one fault', 1],
    ['two faults', 2],
  ]) {
    const some = all.filter(({ machine }) => machine.faults.length === of);
    if (some.length > 0)
      console.log(
        `    ${what.padEnd(14)} ${String(some.length).padStart(5)}  named ${percent(shareOf(some, 'named'))}`,
      );
  }
  console.log(
    `  causes named: one ${sized(1)}, two ${sized(2)}, three ${sized(3)}, more ${sized(4, Infinity)}`,
  );
  console.log(
    `  actions ${figure(meanOf(all, ({ asked }) => asked.length))}  minutes ${figure(meanOf(all, (each) => each.minutes))}`,
  );
}

function listed(all, judged) {
  for (const each of all.filter((one) => judged(one) !== 'named')) {
    const { machine, conclusion, asked } = each;
    console.log(
      `  ${judged(each)} ${machine.seed} ${machine.wiring.circuit.name} ${machine.history} ${machine.around.told}: ${machine.faults.join(' + ') || 'nothing'} -> ${conclusion.causes.map((one) => one.join(' + ') || 'nothing').join(' | ')} (${conclusion.share.toFixed(3)})  ${asked.map(({ deed, outcome }) => `${deed}: ${outcome}`).join('; ')}`,
    );
  }
}
