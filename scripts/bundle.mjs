// What tsc left in dist, once more in dist/bundle, with the packages it imports, in few files: to open half a thousand of them takes longer
// than most commands do. Packages with a native part, or that look for files of their own, stay where they are. bin/tellwire.js runs it.
// Beside each file that a replay of the demo needs lies the code that the engine made of it, which bin/kept-code.js takes up.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { rolldown } from 'rolldown';
import { inRoot, run } from './readiness.mjs';

const out = inRoot('dist', 'bundle');
rmSync(out, { recursive: true, force: true });
const main = inRoot('dist', 'console', 'main.js');
const thread = inRoot('dist', 'console', 'survey-thread.js');

const bundled = (input) =>
  rolldown({ input, platform: 'node', external: ['blessed', 'serialport', /^node:/], logLevel: 'warn' });

/** The modules a thread loads before it does anything. */
async function neededAtOnce(entry) {
  const alone = await bundled({ entry });
  const { output } = await alone.generate({ format: 'esm' });
  await alone.close();
  const named = new Map(output.map((chunk) => [chunk.fileName, chunk]));
  const reached = (chunk) => [
    chunk,
    ...chunk.imports
      .map((name) => named.get(name))
      .filter(Boolean)
      .flatMap(reached),
  ];
  const first = output.find((chunk) => chunk.isEntry);
  return new Set(
    reached(first)
      .flatMap((chunk) => chunk.moduleIds)
      .filter((id) => id !== entry),
  );
}

const ofThread = await neededAtOnce(thread);
const bundle = await bundled({ main, 'survey-thread': thread });
await bundle.write({
  dir: out,
  format: 'cjs',
  dynamicImportInCjs: false,
  chunkFileNames: '[name]-[hash].js',
  entryFileNames: '[name].js',
  // All that the thread needs in one file, and nothing else in it.
  codeSplitting: { groups: [{ name: 'capture', test: (id) => ofThread.has(id) }] },
});
await bundle.close();
// The project's own files are modules of the other kind.
writeFileSync(join(out, 'package.json'), '{ "type": "commonjs" }\n');

// Whatever fails here costs a later start some time, and no more; a test sees to it that the code is there.
const work = mkdtempSync(join(tmpdir(), 'tellwire-bundle-'));
try {
  const session = join(work, 'session');
  run(process.execPath, [inRoot('dist', 'console', 'demo.js'), '--out', session], {}, 'ignore');
  run(process.execPath, [inRoot('scripts', 'keep-code.mjs'), session], {}, 'ignore');
} finally {
  rmSync(work, { recursive: true, force: true });
}
