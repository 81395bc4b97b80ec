#!/usr/bin/env node
'use strict';
const { readFileSync } = require('node:fs');
const { kept, compile, run } = require('./compiled.cjs');

let cachedData;
try {
  cachedData = readFileSync(kept);
} catch {
  // Not kept: the same program, some tens of milliseconds later.
}
run(compile(cachedData));
