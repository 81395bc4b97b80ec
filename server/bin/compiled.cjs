'use strict';
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script, constants } = require('node:vm');

const bundle = join(__dirname, '../dist/sideport.cjs');
/** What the compiler made of the bundle in a trial run at the build; see tools/keep-compiled.mjs. */
const kept = `${bundle}.compiled`;

/**
 * The bundle as a script that takes what a module is given. Kept code of another Node is refused and made afresh. What
 * was kept was kept from a bundle in plain ASCII, which is read faster one byte a character.
 */
function compile(cachedData, encoding = cachedData === undefined ? 'utf8' : 'latin1') {
  const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(bundle, encoding)}\n})`;
  const importModuleDynamically = constants?.USE_MAIN_CONTEXT_DEFAULT_LOADER;
  return new Script(source, { filename: bundle, cachedData, importModuleDynamically });
}

function run(script) {
  script.runInThisContext()(exports, require, module, bundle, join(bundle, '..'));
}

module.exports = { bundle, kept, compile, run };
