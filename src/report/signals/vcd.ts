import type { SignalEvent } from '../../model/signal-event.ts';
import { visible } from '../../model/visible.ts';

export interface VcdHead {
  readonly toolVersion: string;
  /** UTC, as the session holds it. */
  readonly started: string;
  readonly machine: string;
  readonly inputs: readonly string[];
}

/**
 * A value change dump, four states, as IEEE 1364-2005 clause 18 lays it down, piece by piece. Each input has two one-bit wires:
 * its electrical level, and whether the controller takes it as active. `x` is unknown: not reported, or not known since the
 * stream broke off. Time is in microseconds since the session began.
 */
export function* vcd(head: VcdHead, events: Iterable<SignalEvent>): Generator<string> {
  const wires = new Map(head.inputs.map((input, i) => [input, [codeOf(2 * i), codeOf(2 * i + 1)] as const]));
  const every = [...wires.values()].flat();
  yield* headLines(head, wires);
  const values = new Map(every.map((code) => [code, 'x']));
  yield `#0\n$dumpvars\n${every.map((code) => `x${code}\n`).join('')}$end\n`;
  let now = 0;
  for (const event of events) {
    const next = changesOf(event, wires, every).filter(([code, value]) => values.get(code) !== value);
    if (next.length === 0) continue;
    const at = Math.round(event.at * 1000);
    const time = at > now ? `#${at}\n` : '';
    now = Math.max(now, at);
    for (const [code, value] of next) values.set(code, value);
    yield time + next.map(([code, value]) => `${value}${code}\n`).join('');
  }
}

type Change = readonly [code: string, value: string];
type Wires = ReadonlyMap<string, readonly [level: string, active: string]>;

function changesOf(event: SignalEvent, wires: Wires, every: readonly string[]): readonly Change[] {
  if (event.kind === 'break') return every.map((code) => [code, 'x']);
  const codes = wires.get(event.input);
  if (codes === undefined) return [];
  const level = { H: '1', L: '0', '?': 'x' }[event.level];
  const active = event.active === '?' ? 'x' : event.active;
  return [
    [codes[0], level],
    [codes[1], active],
  ];
}

function* headLines(head: VcdHead, wires: Wires): Generator<string> {
  yield `$date ${words(head.started)} $end\n`;
  yield `$version tellwire ${words(head.toolVersion)} $end\n`;
  yield `$comment ${words(head.machine)}: level_ is the electrical level, active_ is after the polarity setting. $end\n`;
  yield '$timescale 1 us $end\n$scope module inputs $end\n';
  for (const [input, [level, active]] of wires) {
    yield `$var wire 1 ${level} level_${identifier(input)} $end\n`;
    yield `$var wire 1 ${active} active_${identifier(input)} $end\n`;
  }
  yield '$upscope $end\n$enddefinitions $end\n';
}

/** Input names hold lower-case letters, digits and hyphens: none of them becomes another's. */
const identifier = (input: string): string => input.replaceAll('-', '_');

/** Printable ASCII without a `$`, which would begin a keyword. */
const words = (text: string): string => visible(text).replace(/[^\x20-\x7e]|\$/g, '?');

/** Identifier codes are made of the printable characters ! to ~, shortest first. */
function codeOf(index: number): string {
  const digit = String.fromCharCode(33 + (index % 94));
  return index < 94 ? digit : codeOf(Math.floor(index / 94) - 1) + digit;
}
