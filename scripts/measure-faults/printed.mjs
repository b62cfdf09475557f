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
  /** Share of two faults of which one was found, and then, with that mended, the other. */
  const mendedToo = [];
  const runs = [
    ['without mistakes', 0],
    [`${percent(measure.mistaken)} of the answers wrong or missing`, measure.mistaken],
  ].map(([name, mistakes]) => {
    const first = measure.searched(machines, chosen, mistakes, solve);
    told(name, first, measure, judged);
    const again = hasNgspice ? measure.searchedAgain(first, mistakes, solve) : [];
    mendedToo.push(again.filter((each) => judged(each) === 'named').length / first.length);
    if (again.length > 0)
      console.log(
        `  of these ${again.length}, one mended and searched again: the other named ${percent(measure.shareOf(again, 'named'))}`,
      );
    if (missed) listed(first, judged);
    return first;
  });
  const list = measure.searched(machines, measure.guideOf(machines, seed, short ? 120 : 600), 0, solve);
  told('a fixed checklist, without mistakes', list, measure, judged);
  const minutes = (all) => measure.meanOf(all, (each) => each.minutes);
  const ratio = minutes(runs[0]) / minutes(list);
  console.log(`minutes beside the checklist's: ${percent(ratio)}`);

  const problems = measure.optimumCompared(machines.slice(0, short ? 12 : 96), seed);
  const beyond = problems.map(({ least, chosen: own }) => own / least);
  const overall = mean(problems.map((each) => each.chosen)) / mean(problems.map((each) => each.least));
  console.log(
    `\nexact optimum on ${problems.length} small problems (6 causes, 6 deeds): ${overall.toFixed(3)} times its minutes on average, ${Math.max(...beyond).toFixed(2)} times at most`,
  );

  const slowest = slowestDecision(machines, short ? 10 : 48, { prospectFor, Inquiry });
  console.log(
    `slowest decision: ${slowest.ms.toFixed(0)} ms of the processor's time, over ${slowest.decisions} decisions (${slowest.where})`,
  );
  console.log(`networks solved by ngspice: ${networks}`);
  const [named = 0, despite = 0] = runs.map((all, at) => measure.shareOf(all, 'named') + mendedToo[at]);
  console.log(
    `named, of two faults at once or one after the other: ${percent(named)} without mistakes, ${percent(despite)} with ${percent(measure.mistaken)} of the answers wrong or missing`,
  );
  const aims = [
    [`99 % named without mistakes: ${percent(named)}`, named >= 0.99],
    ['at most 1.1 times the optimum', overall <= 1.1],
    ["at most half the checklist's minutes", ratio <= 0.5],
    ['a decision in less than 100 ms', slowest.ms < 100],
  ];
  for (const [aim, reached] of aims) console.log(`${reached ? 'reached' : 'MISSED '}  ${aim}`);
  // Few machines say little about a share: the short form only shows that everything runs.
  return short || aims.every(([, reached]) => reached);
}

/** Of every kind of machine: with everything still possible, and after each outcome of the first deeds; each decided three times, the quickest counts. */
function slowestDecision(machines, kinds, { prospectFor, Inquiry }) {
  let slowest = { ms: 0, where: '' };
  let decisions = 0;
  const decide = (inquiry, where) => {
    decisions++;
    const ms = Math.min(
      ...Array.from({ length: 3 }, () => {
        const began = process.cpuUsage();
        inquiry.next();
        const { user, system } = process.cpuUsage(began);
        return (user + system) / 1000;
      }),
    );
    if (ms > slowest.ms) slowest = { ms, where };
    return inquiry.next()?.test;
  };
  for (const prospect of [...new Set(machines.map(prospectFor))].slice(0, kinds)) {
    const inquiry = Inquiry.begin(prospect);
    const { name } = prospect.wiring.circuit;
    const first = decide(inquiry, `${name}, everything possible`);
    for (const key of first?.keys ?? [])
      decide(inquiry.learnt(first.name, key), `${name}, ${first.name}: ${key}`);
  }
  return { ...slowest, decisions };
}

function told(name, all, { shareOf, meanOf }, judged) {
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
  const few = all.filter((each) => judged(each) === 'named' && each.conclusion.causes.length <= 3);
  console.log(`  named alone or among three at most ${percent(few.length / all.length)}`);
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
