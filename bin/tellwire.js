#!/usr/bin/env node
import '../dist/console/main.js';
