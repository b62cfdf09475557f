// npm run measure:learn: learns streams drawn from all shapes and prints the share bound, asked and refused, and how many were bound
// wrongly. 1000 of them, or as many as named, from the first one named: npm run measure:learn -- 200 501
import { spawn } from 'node:child_process';

const [streams = '1000', from = '1'] = process.argv.slice(2);
const run = spawn('npx', ['vitest', 'run', 'tests/learning/drawn-streams.test.ts'], {
  stdio: 'inherit',
  env: { ...process.env, DRAWN_STREAMS: streams, DRAWN_FROM: from },
});
run.on('exit', (code) => {
  process.exitCode = code ?? 1;
});
