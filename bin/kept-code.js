// Loads a bundle with the code that the engine made of it when it was built, where that is still there and of this very engine; to make
// it anew takes as long as a short command does its work. Everything else about the files is as `require` has it.
const { createHash } = require('node:crypto');
const { readFileSync, writeFileSync } = require('node:fs');
const { wrap } = require('node:module');
const { dirname, join } = require('node:path');
const { Script } = require('node:vm');

/** By the file they came from: `{ module, script, text }`. */
const loaded = new Map();

/** What a file of the bundle exports. Throws what it throws. */
function load(file) {
  const before = loaded.get(file);
  if (before) return before.module.exports;
  const module = { exports: {} };
  const text = readFileSync(file, 'utf8');
  const script = new Script(wrap(text), { filename: file, cachedData: keptFor(file, text) });
  loaded.set(file, { module, script, text });
  const folder = dirname(file);
  const needs = (name) => (name.startsWith('./') ? load(join(folder, name)) : require(name));
  script.runInThisContext()(module.exports, needs, module, file, folder);
  return module.exports;
}

/** Keeps the code of all that was loaded so far, functions that were called included. */
function keep() {
  for (const [file, { script, text }] of loaded) {
    const code = script.createCachedData();
    writeFileSync(codeOf(file), Buffer.concat([seal(text, code), code]));
  }
}

/** The engine refuses code of another version or other flags, but believes it in all else: one wrong bit would end the process. */
function keptFor(file, text) {
  let kept;
  try {
    kept = readFileSync(codeOf(file));
  } catch {
    return undefined;
  }
  const code = kept.subarray(sealLength);
  return seal(text, code).equals(kept.subarray(0, sealLength)) ? code : undefined;
}

const codeOf = (file) => `${file}.code`;
const sealLength = 20;
const seal = (text, code) => createHash('sha1').update(text).update(code).digest();

module.exports = { load, keep };
