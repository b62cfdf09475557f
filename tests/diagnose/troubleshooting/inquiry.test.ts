import { beforeAll, describe, expect, it } from 'vitest';
import { circuitNamed } from '../../../src/diagnose/circuit/registry.ts';
import { wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { Inquiry } from '../../../src/diagnose/troubleshooting/inquiry.ts';
import { type Prospect, prospectOf } from '../../../src/diagnose/troubleshooting/prospect.ts';
import { unforeseen } from '../../../src/model/outcomes.ts';

let prospect: Prospect;
beforeAll(() => {
  prospect = prospectOf(wiringOf(circuitNamed('normally-closed-to-ground')), 'worked', {
    told: 'both',
    otherEnd: true,
  });
}, 60_000);

/** Every answer is the likeliest one under this hypothesis. */
function followed(hypothesis: number) {
  let inquiry = Inquiry.begin(prospect);
  let minutes = 0;
  const asked: string[] = [];
  for (let choice = inquiry.next(); choice; choice = inquiry.next()) {
    const { test } = choice;
    const row = test.chances[hypothesis] ?? [];
    minutes += test.minutes;
    asked.push(test.name);
    inquiry = inquiry.learnt(test.name, test.keys[row.indexOf(Math.max(...row))] ?? unforeseen);
  }
  return { inquiry, minutes, asked };
}

/** ms of the processor's time, the quickest of three: what other work on the computer takes is not the decision's. */
const decisionTime = (inquiry: Inquiry): number =>
  Math.min(
    ...Array.from({ length: 3 }, () => {
      const began = process.cpuUsage();
      inquiry.next();
      const { user, system } = process.cpuUsage(began);
      return (user + system) / 1000;
    }),
  );

const singles = () =>
  [...prospect.hypotheses.keys()].filter((at) => prospect.hypotheses[at]?.faults.length === 1);

describe('an inquiry', () => {
  it('decides on a next deed in under 100 ms of the processor, with all faults and likely pairs alive and after any first answer', () => {
    const slowest = (['normally-open-to-supply', 'npn-into-pull-up'] as const).map((circuit) => {
      const begun = Inquiry.begin(
        prospectOf(wiringOf(circuitNamed(circuit)), 'fresh', { told: 'both', otherEnd: true }),
      );
      const first = begun.next()?.test;
      const answered = first?.keys.map((key) => begun.learnt(first.name, key)) ?? [];
      return Math.max(...[begun, ...answered].map(decisionTime));
    });
    console.log(`slowest decisions: ${slowest.map((each) => each.toFixed(1)).join(', ')} ms`);
    expect(Math.max(...slowest)).toBeLessThan(100);
  }, 60_000);

  it('ends with the planted fault named, alone or among those nothing left tells apart, when every answer is right', () => {
    let minutes = 0;
    let deeds = 0;
    const missed: string[] = [];
    for (const at of singles()) {
      const name = prospect.hypotheses[at]?.faults[0]?.name ?? '';
      const { inquiry, minutes: spent, asked } = followed(at);
      minutes += spent;
      deeds += asked.length;
      const { causes } = inquiry.conclusion();
      if (!causes.some((each) => each.length === 1 && each[0] === name))
        missed.push(
          `${name}: ${causes.map((each) => each.join('+')).join(' or ')} after ${asked.join(', ')}`,
        );
    }
    const all = singles().length;
    console.log(
      `${all - missed.length} of ${all} named, ${(deeds / all).toFixed(1)} deeds, ${(minutes / all).toFixed(1)} minutes`,
    );
    if (missed.length > 0) console.log(missed.join('\n'));
    expect(missed).toEqual([]);
  }, 90_000);
});
