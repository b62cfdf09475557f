// What tsc left in dist, once more in dist/bundle, with the packages it imports, in few files: to open half a thousand of them takes longer
// than most commands do. Packages with a native part, or that look for files of their own, stay where they are. bin/tellwire.js runs it.
import { rmSync } from 'node:fs';
import { rolldown } from 'rolldown';
import { inRoot } from './readiness.mjs';

const out = inRoot('dist', 'bundle');
rmSync(out, { recursive: true, force: true });
const bundle = await rolldown({
  input: {
    main: inRoot('dist', 'console', 'main.js'),
    'survey-thread': inRoot('dist', 'console', 'survey-thread.js'),
  },
  platform: 'node',
  external: ['blessed', 'serialport', /^node:/],
  logLevel: 'warn',
});
await bundle.write({
  dir: out,
  format: 'esm',
  chunkFileNames: '[name]-[hash].js',
  entryFileNames: '[name].js',
  // All that the thread needs in one file.
  codeSplitting: {
    groups: [
      {
        name: 'capture',
        test: /dist.(transport.(capture|hearing|line-splitter|received-head|stream)|session.(capture-|stream-(reader|statistics))|model.(units|visible|stream-description))/,
      },
    ],
  },
});
await bundle.close();
