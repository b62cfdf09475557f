import { describe, expect, it } from 'vitest';
import { asTyped, startedAs } from '../../src/console/as-typed.ts';
import { linesFor } from '../../src/console/faces/lines-text.ts';
import { failureText } from '../../src/console/failure.ts';
import { ToolError } from '../../src/model/tool-error.ts';
import { machine } from './events.ts';
import { tellwire } from './run.ts';

describe('a command in a hint', () => {
  it.each([
    ['typed by its name', '/usr/local/bin/tellwire', '/home/ann', 'tellwire'],
    ['without a script at all', undefined, '/home/ann', 'tellwire'],
    ['through npx', '/home/ann/shop/node_modules/.bin/tellwire', '/home/ann/shop', 'npx tellwire'],
    [
      'as a file, from its own folder',
      '/home/ann/tellwire/bin/tellwire.js',
      '/home/ann/tellwire',
      'node bin/tellwire.js',
    ],
    [
      'as a file, from below it',
      '/home/ann/tellwire/bin/tellwire.js',
      '/home/ann/tellwire/mill',
      'node ../bin/tellwire.js',
    ],
    [
      'as a file, from far away',
      '/opt/tellwire/bin/tellwire.js',
      '/home/ann/a/b/c',
      'node /opt/tellwire/bin/tellwire.js',
    ],
    [
      'out of a folder with a space',
      '/home/ann/my tools/bin/tellwire.js',
      '/home/ann',
      'node "my tools/bin/tellwire.js"',
    ],
  ])('is shown as this program was started: %s', (_how, script, folder, start) =>
    expect(startedAs(script, folder)).toBe(start),
  );

  it('names the program’s own file where the demonstration was started', () =>
    expect(startedAs(`${process.cwd()}/dist/console/demo.js`, process.cwd())).toBe('node bin/tellwire.js'));

  it('is any command that there is', async () => {
    const { out } = await tellwire('--help');
    const [, listed = ''] = /^Commands:\n([\s\S]*?)\n\n/m.exec(out) ?? [];
    const names = [...listed.matchAll(/^ {2}([a-z]+)/gm)].map(([, name = '']) => name);
    expect(names.length).toBeGreaterThan(10);
    for (const name of names.filter((each) => each !== 'help'))
      expect(asTyped(`Run \`tellwire ${name}\`.`, 'node x.js')).toBe(`Run \`node x.js ${name}\`.`);
  });

  it('is told apart from the name of the tool in a sentence', () => {
    for (const text of ['tellwire only listens.', 'It was written by tellwire 0.1.0', 'tellwire: no port'])
      expect(asTyped(text, 'node x.js')).toBe(text);
  });
});

describe('what is said to a person at a terminal', () => {
  const wrong = new ToolError('wrong-usage', 'No port was named.', `Add --port; ${'word '.repeat(30)}end.`);

  it('of a failure is broken where the terminal ends, and left whole for a file', () => {
    const lines = failureText(wrong, 80).trimEnd().split('\n');
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(line.length).toBeLessThan(80);
    expect(failureText(wrong, undefined).trimEnd().split('\n')).toHaveLength(2);
  });

  it('of a notice has its commands as they can be typed here', () => {
    const [, script = ''] = process.argv;
    process.argv[1] = `${process.cwd()}/bin/tellwire.js`;
    try {
      const text = '`tellwire learn` writes one.';
      expect(linesFor({ kind: 'notice', topic: 'nothing-understood', text }, machine())).toEqual([
        '`node bin/tellwire.js learn` writes one.',
      ]);
    } finally {
      process.argv[1] = script;
    }
  });
});
