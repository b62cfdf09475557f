import { Command } from 'commander';
import { circuitValues } from '../../model/machine-file/circuit-kinds.ts';
import type { WiringFlags } from '../wiring-candidates.ts';
import type { Run } from './flags.ts';

const about = {
  supply: 'what feeds the switch, or the pull-up of a plain contact',
  'logic supply': 'what feeds the pin, where it is another',
  'pull-up': 'from the terminal to +',
  'pull-down': 'from the terminal to 0 V',
  series: 'from the terminal to the pin or the light',
  bleed: 'across the light of an optocoupler',
  divider: 'from the pin to 0 V, behind the series resistor',
  load: 'inside the sensor, from its output to its supply',
  cable: 'there and back',
  'end resistor': 'across a supervised contact',
  'contact resistor': 'before a supervised contact',
  filter: 'from the pin to 0 V',
  drop: 'across the sensor’s output at 10 mA',
  'led drop': 'across the light at 10 mA',
  leakage: 'through the sensor when off',
} as const satisfies Record<keyof typeof circuitValues, string>;

const more = `
A name may carry its own values:
  normally-closed-to-ground:pull-up=2.2kohm,supply=5V
With --machine, a name is an input of the file; its circuit, contact and
values are taken from there.
It only computes: nothing is heard, asked or measured.`;

export function wiringCommand(done: Run): Command {
  const command = new Command('wiring')
    .description('what a wiring does under every fault, computed; compare wirings')
    .argument('[names...]', 'wirings, or inputs of the machine file; left out: the list of wirings')
    .option('--machine <file>', 'the machine file that names the inputs')
    .option('--compare', 'side by side, the best first; without names: the usual candidates')
    .option('--contact <contact>', 'normally open or normally closed, where the wiring leaves it open')
    .option('--input <kind>', 'kind of input, such as "schmitt" or "IEC 61131-2 type 3"')
    .option('--core <size>', 'section or gauge of the cable, such as 0.25mm2 or 24awg; with --length')
    .option('--length <metres>', 'length of the cable, such as 10m')
    .option('--format <format>', 'text, md, html or json', 'text')
    .option('--json', 'the same as --format json')
    .addHelpText('after', more);
  for (const [name, measure] of Object.entries(circuitValues))
    command.option(`--${name.replaceAll(' ', '-')} <${measure}>`, about[name as keyof typeof about]);
  return command.action(async (names: readonly string[], flags: WiringFlags) => {
    const { wiringText } = await import('../run-wiring.ts');
    process.stdout.write(wiringText(names, flags));
    done(0);
  });
}
