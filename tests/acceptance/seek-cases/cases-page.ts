import { cases, notApart, notPlayed } from './all-cases.ts';
import type { Play } from './seek-case.ts';

const opening = `# What a seek can be, and what is told of it

Each way a first seek and a homing can go on a machine, played by the simulated one, and everything that a session then says that it
would not say of a sound machine: by check and axis, the status, the kinds of finding, in brackets everything that each can have
been, and what is missing. The lines are written by hand from what wire, motor and setting do (common practice, no source); the tests hold
the tool to them, with nothing missing and nothing more. What is warned of is sounded while the axis moves: the tool listens, it
cannot stop the machine. What a kind means: \`tellwire explain <finding>\`, or [findings.md](findings.md).
`;

/** The page of the cases, made from the very data the tests compare with. */
export function casesPage(): string {
  const rows = cases.flatMap(({ name, plays }) =>
    plays.map(
      (play, i) =>
        `| ${i === 0 ? `**${name}**` : ''} | ${planted(play)} | ${told(play)} | ${(play.dangers ?? []).map(code).join('<br>') || '–'} | ${play.because} |`,
    ),
  );
  const open = Object.entries(notApart).map(
    ([name, { why, apart }]) => `- **${name}**: ${why}. What tells more: ${apart}.`,
  );
  const left = Object.entries(notPlayed).map(([name, why]) => `- **${name}**: ${why}`);
  return `${opening}
| case | planted | told | warned of | because |
| --- | --- | --- | --- | --- |
${rows.join('\n')}

## What stays open

These are told in the words of another case, or with more than one thing that they can have been.

${open.join('\n')}

## What is not played

${left.join('\n')}
`;
}

const code = (text: string): string => `\`${text}\``;

const told = ({ found }: Play): string => (found.length === 0 ? '–' : found.map(code).join('<br>'));

function planted(play: Play): string {
  const { fault, later, laterAt, on, moved, atOnce, stands, hands } = play;
  const said = [
    ...(fault === undefined ? [] : [code(fault)]),
    ...(later === undefined
      ? []
      : [`${code(later)} ${laterAt ? `before \`${laterAt}\`` : 'after the presses'}`]),
    ...(moved ? [`${moved[0]} moved by ${moved[1]} after the presses`] : []),
    ...Object.entries(stands ?? {}).map(([axis, at]) => `${axis} stands at ${at}`),
    ...(on === 'portal' ? ['on the portal'] : []),
    ...(atOnce ? ['X and Y home at once'] : []),
    ...(hands?.ignoresDanger ? ['warnings are not heeded'] : []),
  ];
  return said.length === 0 ? 'nothing' : said.join(', ');
}
