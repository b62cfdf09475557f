import { Command } from 'commander';
import { showJson, showLines } from '../show.ts';
import type { Run } from './flags.ts';

export const portsCommand = (done: Run): Command =>
  new Command('ports')
    .description('list the serial ports of this computer')
    .option('--json', 'as a JSON array')
    .action(async ({ json }: { json?: boolean }) => {
      const { listPorts } = await import('../../transport/serial-ports.ts');
      const ports = await listPorts();
      if (json) showJson(ports);
      else if (ports.length === 0)
        showLines(['No serial port is there. Is the cable in, and does the computer know the adapter?']);
      else
        showLines(
          ports.map(({ path, maker, usb, serialNumber }) =>
            [path, maker, usb && `USB ${usb}`, serialNumber && `serial number ${serialNumber}`]
              .filter(Boolean)
              .join(', '),
          ),
        );
      done(0);
    });
