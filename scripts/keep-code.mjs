// Replays a session with the bundle and keeps the code that was made for it beside the bundle: node scripts/keep-code.mjs <session>
import { createRequire } from 'node:module';
import { inRoot } from './readiness.mjs';

const { load, keep } = createRequire(import.meta.url)(inRoot('bin', 'kept-code.js'));
process.argv = [process.execPath, inRoot('bin', 'tellwire.js'), 'replay', ...process.argv.slice(2)];
process.on('exit', keep);
load(inRoot('dist', 'bundle', 'main.js'));
