import { weightOf } from '../model/finding.ts';
import type { SessionFacts } from '../model/session-facts.ts';
import { ms } from '../model/units.ts';
import { whatItIs } from '../words/acceptance.ts';
import { caution, dropCautions } from '../words/cautions.ts';
import { listed, roundedUp, timeText } from '../words/figures.ts';
import { saidOf } from '../words/findings/catalogue.ts';

/** Hazards to people that go with the work this record asks for. */
export const cautionsFor = ({ machine }: SessionFacts): readonly string[] => [
  caution.listens,
  caution.motorsOff,
  ...dropCautions(machine),
  caution.signalOnly,
  caution.mains,
  caution.noBridge,
  caution.statusNoProof,
  caution.leaveIt,
  caution.licensed,
];

/** How far the results of this session reach, taken from its own findings and its own stream. */
export function limitationsOf(facts: SessionFacts): readonly string[] {
  return [
    ...facts.verdicts.flatMap((verdict) =>
      verdict.findings
        .filter(({ kind }) => weightOf[kind] === 'limitation')
        .map((finding) =>
          saidOf(finding, { machine: facts.machine, subject: verdict.subject, together: [] }),
        ),
    ),
    ...controllerEnd(facts),
    ...sharedInputs(facts),
    ...shortestPulse(facts),
    whatItIs.positions,
  ].filter((line, i, all) => all.indexOf(line) === i);
}

function controllerEnd({ verdicts }: SessionFacts): readonly string[] {
  const there = verdicts.filter((each) => each.facts.unpluggedAt === 'controller');
  if (there.length === 0) return [];
  return [
    `Unplugged at the controller only: ${listed(there.map(({ subject }) => subject))}. The cable between controller and switch was not part of the test.`,
  ];
}

const sharedInputs = ({ machine }: SessionFacts): readonly string[] =>
  machine.inputs
    .filter(({ switches }) => switches.length > 1)
    .map(
      ({ name, switches, joined }) =>
        `${name} serves ${listed(switches.map(({ subject }) => subject))} in ${joined}: the controller cannot tell which of them was struck.`,
    );

function shortestPulse({ verdicts }: SessionFacts): readonly string[] {
  const pulses = verdicts.flatMap(({ facts }) => facts.resolution?.surePulse ?? []);
  if (pulses.length === 0) return [];
  const longest = ms(pulses.reduce((most, each) => Math.max(most, each), 0));
  return [
    `Where the stream was slowest, a pulse shorter than ${timeText(roundedUp(longest))} could have passed unseen.`,
  ];
}
