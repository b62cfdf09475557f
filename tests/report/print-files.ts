import { buildRecord } from '../../src/report/build-record.ts';
import { reportFiles } from '../../src/report/formats.ts';
import { weekend } from './weekend.ts';

if (process.env.THREE_YEARS_ON !== undefined) {
  const Present = Date;
  const present = Present.now;
  const later = () => present() + 3 * 365.25 * 86_400_000;
  globalThis.Date = class extends Present {
    constructor(...told: []) {
      super(...(told.length === 0 ? ([later()] as unknown as []) : told));
    }
    static override now = later;
  } as DateConstructor;
}
process.stdout.write(JSON.stringify(reportFiles(buildRecord(weekend))));
