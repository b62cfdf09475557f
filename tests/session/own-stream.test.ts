import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packBundle, withBundle } from '../../src/session/bundle.ts';
import { SessionFolder } from '../../src/session/folder.ts';
import { replay } from '../../src/session/replay.ts';
import { briefly, twoSwitches } from './two-switches.ts';
import { judged, remove, temporaryFolder, workplace } from './virtual-session.ts';
import { WhenAsked, whenAsked } from './when-asked.ts';

const folder = temporaryFolder();
const place = workplace(twoSwitches);
const controller = new WhenAsked();
const own = `# Wrote this at Mrs Example's shop\n${whenAsked().replace('asked\n', 'asked   # by the window\n')}`;
const session = (more: object, stopsAtPress = false) =>
  place.session({
    folder,
    session: { ...briefly, checks: ['rest', 'press'], streamText: own, ...more },
    through: controller.through,
    stopAt: (event) => stopsAtPress && event.kind === 'ask' && event.ask.action === 'press',
  });

beforeAll(async () => {
  expect((await session({}, true)).exit).toBe(2);
}, 60_000);
afterAll(() => {
  place.leave();
  remove(folder);
});

describe('a session that reads by a stream description', () => {
  it('is not gone on with by another one, and nothing is written', async () => {
    const before = controller.written.length;
    const kept = readFileSync(join(folder, 'capture.log'), 'latin1');
    await expect(session({ resume: true, streamText: whenAsked(150) })).rejects.toMatchObject({
      code: 'session-differs',
    });
    expect(readFileSync(join(folder, 'capture.log'), 'latin1')).toBe(kept);
    expect(controller.written.length).toBe(before);
  });

  it('is gone on with by its copy, to its end', async () => {
    const done = await session({ resume: true, streamText: undefined, machineText: undefined });
    expect(judged(done)).toContain('press x-home: proved edge');
    expect(readFileSync(join(folder, 'stream.yaml'), 'utf8')).toBe(own);
  });

  it('left without names holds none of the description’s, and judges the same', () => {
    const file = join(folder, 'bundle.tar.gz');
    packBundle(folder, file, true);
    withBundle(file, (opened) => {
      const text = readFileSync(join(opened, 'stream.yaml'), 'utf8');
      expect(text).not.toMatch(/Example|window|speaks when/);
      expect(text).toContain('stream: left out');
      expect(text).not.toContain('#');
      expect(existsSync(new SessionFolder(opened).file('capture.log'))).toBe(true);
      expect(judged(replay(opened))).toEqual(judged(replay(folder)));
    });
  });
});
