import { faultList } from '../../src/bench/faults.ts';
import { checksOfTable, mustSay, plantedFaults, rows } from './fault-table.ts';
import { motions } from './faults-in-the-motion.ts';

const opening = `# What is told apart

Each line is one fault planted in the simulated machine, and what each check must then tell of it: by subject, the status and the
kinds of finding. A dash means that the check says the same as of a sound machine: everything proved, nothing found. So a dash
under *rest* beside a cut wire is no mistake: a cut wire is as steady as a sound one, which is why nothing is proved by rest alone.
Three digits are what an input reports at rest, pressed and unplugged, 1 for active.

The lines are written by hand from what wire, contact and controller do; the tests hold the tool to them, with nothing missing and
nothing more, on a machine that is otherwise sound: every contact normally closed to ground, every setting active when open. Real
machines have faults that are not in this list, and two at a time. What a kind means: \`tellwire explain <finding>\`, or
[findings.md](findings.md).
`;

const motionOpening = `
## Faults of the motion

These are planted too, and the tests hold the checks above to saying nothing of them that they would not say of a sound machine: with
the motors off none of them shows.
`;

/** The page of the table, made from the very data the tests compare with. */
export function tablePage(): string {
  const head = ['planted', ...checksOfTable.map((check) => check)];
  const lines = plantedFaults.filter(isInTable).map(({ plant, because }) => {
    const cells = rows
      .filter((row) => row.plant === plant)
      .map((row) => mustSay(row).map(shown).join('<br>'));
    return `| **${plant}**<br>${described(plant)}<br>*${because}* | ${cells.map((cell) => cell || '–').join(' | ')} |`;
  });
  const motionLines = motions
    .filter((fault) => !isInTable(fault))
    .map(({ plant, because }) => `- **${plant}**: ${described(plant)} *${because}*`);
  return `${opening}\n| ${head.join(' | ')} |\n|${' --- |'.repeat(head.length)}\n${lines.join('\n')}\n${motionOpening}
${motionLines.join('\n')}\n`;
}

/** A fault of the motion stands among the others as soon as a check tells of it. */
const isInTable = (fault: (typeof plantedFaults)[number]): boolean =>
  !motions.includes(fault) || Object.keys(fault.tells).length > 0;

const shown = (told: string): string => told.replace(/^(\S+): (\S+)( ?)(.*)$/, '`$1`: $2$3$4');

const described = (plant: string): string => {
  const text = faultList.find(({ name }) => name === plant.split(':')[0])?.description ?? '';
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
};
