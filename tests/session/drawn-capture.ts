import fc from 'fast-check';
import { sumDigits } from '../../src/transport/stream/checksum.ts';

export const framed = (body: string) => `$${body}*${sumDigits(body)}`;

/** What may happen to a stream, one step after the other; most steps are a report. */
export const step = fc.oneof(
  { weight: 60, arbitrary: fc.record({ do: fc.constant('report' as const), shown: fc.nat(7) }) },
  {
    weight: 20,
    arbitrary: fc.record({ do: fc.constant('more' as const), shown: fc.nat(2), count: fc.nat(12) }),
  },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('flip' as const), at: fc.nat(200), bit: fc.nat(7) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('drop' as const), at: fc.nat(200) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('twins' as const), at: fc.nat(60) }) },
  {
    weight: 6,
    arbitrary: fc.record({
      do: fc.constantFrom(
        'repeat' as const,
        'jump' as const,
        'restart' as const,
        'edge' as const,
        'volts' as const,
        'declare' as const,
        'other' as const,
        'bare' as const,
        'short' as const,
        'cut' as const,
        'escape' as const,
        'gap' as const,
        'opening' as const,
        'sent' as const,
        'spoilt' as const,
        'long' as const,
      ),
    }),
  },
);
type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

/** A capture as a controller with three inputs and two axes would leave it behind. */
export function captureOf(steps: readonly Step[], start: number): string {
  let [time, seq, clock] = [start, 65_530, 2 ** 32 - 400];
  let last = '';
  const lines: string[] = ['0.000 opening port'];
  const say = (text: string, kind = 'rx') => lines.push(`${time.toFixed(3)} ${kind} ${text}`);
  const report = (shown: number, place = '1.250,-0.5') => {
    seq = (seq + 1) % 65_536;
    clock = (clock + 7) % 2 ** 32;
    const bits = shown.toString(2).padStart(3, '0');
    const levels = bits.replaceAll('1', 'H').replaceAll('0', 'L');
    const activity = ['still', 'moving', 'homing', 'fault', ''][shown % 5] ?? '';
    last = framed(`PTWRS,${seq},${clock},${activity},${levels},${bits}${place && `,${place}`}`);
    return last;
  };
  const spoil = (text: string, at: number, bit: number) => {
    const i = at % text.length;
    const code = (text.charCodeAt(i) ^ (1 << bit)) & 0x7f;
    const byte =
      code < 0x20 || code === 0x5c || code === 0x7f
        ? `\\x${code.toString(16).padStart(2, '0')}`
        : String.fromCharCode(code);
    return text.slice(0, i) + byte + text.slice(i + 1);
  };
  say(framed('PTWRD,1,mm,XY,one two three'));
  for (const each of steps) {
    time += 7.013;
    if (each.do === 'report') say(report(each.shown, `${(seq % 40) / 8},-0.000`));
    if (each.do === 'more')
      for (let i = 0; i < each.count; i++) {
        time += i % 5;
        say(report(each.shown, `${(seq % 9) + 0.125},-0.500`));
      }
    if (each.do === 'flip') say(spoil(report(1), each.at, each.bit));
    // The sum stays right: only what is in it can tell.
    if (each.do === 'twins') say(spoil(spoil(report(1), each.at, 1), each.at + 3, 1));
    if (each.do === 'drop') say(report(2).slice(0, each.at % 40) + last.slice((each.at % 40) + 1));
    if (each.do === 'repeat') say(last);
    if (each.do === 'jump') seq = (seq + 300) % 65_536;
    if (each.do === 'restart') [seq, clock] = [0, 5];
    if (each.do === 'edge') {
      seq = (seq + 1) % 65_536;
      say(framed(`PTWRE,${seq},${(clock * 1000) % 2 ** 32},1,H`));
    }
    if (each.do === 'volts') say(framed(`PTWRA,${clock},5000,,12`));
    if (each.do === 'declare') say(framed('PTWRD,1,mm,XY,one two three'));
    if (each.do === 'other') say(framed('PTWRD,1,inch,XY,one two four'));
    if (each.do === 'bare') say(report(3, ''));
    if (each.do === 'short') say(report(3, '1.5'));
    if (each.do === 'cut') say(report(4).slice(0, 30), 'rx+9');
    if (each.do === 'escape') say('\\x00\\x5c');
    if (each.do === 'gap') say('gone', 'gap');
    if (each.do === 'opening') say('port', 'opening');
    if (each.do === 'sent') say('$PTWRQ*50\\x0d\\x0a', 'tx');
    if (each.do === 'spoilt') lines.push('7.00 rx spoilt');
    if (each.do === 'long') say('x'.repeat(300_000));
  }
  return lines.map((line) => `${line}\n`).join('');
}
