// Writes tests/ngspice/circuit-table.ndjson: what ngspice says every wiring's pin stands at, sound and with every fault. Needs ngspice.
import { spawnSync } from 'node:child_process';

const { status } = spawnSync('npx', ['vitest', 'run', 'tests/ngspice/circuit-table.test.ts'], {
  stdio: 'inherit',
  env: { ...process.env, WRITE_CIRCUIT_TABLE: 'yes' },
});
process.exitCode = status ?? 1;
