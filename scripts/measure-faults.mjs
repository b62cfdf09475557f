// Troubleshoots seeded broken machines to the end and prints how often the true fault is named and what it costs. The machines are not
// the troubleshooter's own: their faults are played by tests/diagnose/troubleshooting/world, their volts come from ngspice.
// Needs a build and ngspice: npm run build && npm run measure:faults [-- --machines 2000 --seed 1 --short]
import { register } from 'node:module';
import { parseArgs } from 'node:util';

register('./measure-faults/typescript-hooks.mjs', import.meta.url);
const world = (name) => import(`../tests/diagnose/troubleshooting/world/${name}.ts`);
const { printed } = await import('./measure-faults/printed.mjs');

const { values } = parseArgs({
  options: {
    machines: { type: 'string' },
    seed: { type: 'string', default: '1' },
    short: { type: 'boolean', default: false },
    missed: { type: 'boolean', default: false },
  },
});
const [machines, seed] = [Number(values.machines ?? (values.short ? 30 : 2000)), Number(values.seed)];
if (!(machines >= 1 && Number.isInteger(seed))) throw new Error('--machines and --seed take whole numbers.');

process.exitCode = (await printed(world, { machines, seed, short: values.short, missed: values.missed }))
  ? 0
  : 1;
