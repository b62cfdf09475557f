#!/usr/bin/env node
const { join } = require('node:path');
const { load } = require('./kept-code.js');

load(join(__dirname, '../dist/bundle/main.js'));
