import { describe, expect, it } from 'vitest';
import { ToolError } from '../../src/model/tool-error.ts';
import { openPort } from '../../src/transport/open-port.ts';
import { realTime } from '../../src/transport/real-time.ts';
import { tcpAddress } from '../../src/transport/tcp.ts';

const time = realTime;
const open = (text: string, baud = 115_200) => openPort(text, { baud, time });

describe('a port as the person names it', () => {
  it.each([
    '/dev/ttyUSB0',
    'COM3',
    './port',
    'tcp://127.0.0.1:3333',
    'tcp://bench.local:1',
    'tcp://[::1]:65535',
  ])('%s is a port', (text) => expect(open(text).port).toBe(text));

  it.each([
    '',
    ' ',
    'tcp://',
    'tcp://host',
    'tcp://host:',
    'tcp://host:0',
    'tcp://host:65536',
    'tcp://host:12:3',
    'tcp:host:12',
    'TCP://host:12',
    'udp://host:12',
    'http://host:12',
    '/dev/tty\x1b[2J',
  ])('%j is none, and the error says what is allowed', (text) => {
    const attempt = () => open(text);
    expect(attempt).toThrow(ToolError);
    expect(attempt).toThrow(
      expect.objectContaining({ code: 'wrong-usage', tryNext: expect.stringContaining('tcp://host:port') }),
    );
    expect(attempt).not.toThrow(/\x1b/);
  });

  it.each([0, -1, 1.5, Number.NaN, 1e9])('%d is no baud rate', (baud) => {
    expect(() => open('/dev/ttyUSB0', baud)).toThrow(expect.objectContaining({ code: 'wrong-usage' }));
  });

  it('may be an IPv6 address in brackets', () => {
    expect(tcpAddress('tcp://[fe80::1]:23')).toEqual({ host: 'fe80::1', port: 23 });
  });
});
