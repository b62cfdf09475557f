// npm run measure:learn: learns streams drawn from all shapes, 1000 or as many as named, and prints the share bound, asked and refused.
import { spawn } from 'node:child_process';

const [streams = '1000'] = process.argv.slice(2);
const run = spawn('npx', ['vitest', 'run', 'tests/learning/drawn-streams.test.ts'], {
  stdio: 'inherit',
  env: { ...process.env, DRAWN_STREAMS: streams },
});
run.on('exit', (code) => {
  process.exitCode = code ?? 1;
});
