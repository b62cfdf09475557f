#!/usr/bin/env node
const { existsSync } = require('node:fs');
const { join } = require('node:path');
const { load } = require('./kept-code.js');

const main = join(__dirname, '../dist/bundle/main.js');
if (existsSync(main)) load(main);
else {
  process.stderr.write(
    'tellwire: this copy of the program is not built yet.\n  Try: npm run build, or npm start.\n',
  );
  process.exitCode = 3;
}
