import { describe, expect, it } from 'vitest';
import { learnCommand } from '../../src/console/learn-command.ts';
import { SessionFolder } from '../../src/session/folder.ts';

describe('the command that learns a stream', () => {
  it.each([
    ['/dev/ttyUSB0', { machine: 'mill.yaml' }, undefined, '--port /dev/ttyUSB0 --machine mill.yaml'],
    ['COM3', { machine: 'my mill.yaml' }, undefined, '--port COM3 --machine "my mill.yaml"'],
    ['bench', { speak: 'json-nested' }, undefined, '--port bench --speak json-nested'],
    ['COM3', {}, new SessionFolder('sessions/a'), '--port COM3 --machine sessions/a/machine.yaml'],
  ])('names the port and the machine of the session: %s %j', (port, flags, resumed, options) =>
    expect(learnCommand(port, flags, resumed)).toBe(`tellwire learn ${options}`),
  );
});
