// Replays a session with the bundle and keeps the code that was made for it beside the bundle: node scripts/keep-code.mjs <session>
import { createRequire } from 'node:module';
import { inRoot } from './readiness.mjs';

const require = createRequire(import.meta.url);
const { load, keep } = require(inRoot('bin', 'kept-code.js'));

// Code is kept for the flags at that moment, and taken up under those at the start.
const engine = require('node:v8');
const { setFlagsFromString } = engine;
engine.setFlagsFromString = (flag) => {
  if (!flag.startsWith('--interrupt-budget')) setFlagsFromString(flag);
};

process.argv = [process.execPath, inRoot('bin', 'tellwire.js'), 'replay', ...process.argv.slice(2)];
process.on('exit', keep);
load(inRoot('dist', 'bundle', 'main.js'));
