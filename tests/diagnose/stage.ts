import { possibleCauses } from '../../src/diagnose/cause-finding/remaining.ts';
import type { AnyCheck } from '../../src/diagnose/checks/any-check.ts';
import { registry } from '../../src/diagnose/checks/registry.ts';
import type { Answer, Ask, AskEnd } from '../../src/model/ask.ts';
import type { Machine } from '../../src/model/machine.ts';
import { readMachineFile } from '../../src/model/machine-file/read.ts';
import type { Ended, Scene, Window } from '../../src/model/procedure.ts';
import type { Active, Activity, Level, Reading, StatusReading } from '../../src/model/reading.ts';
import { ms, seconds } from '../../src/model/units.ts';
import type { Verdict } from '../../src/model/verdict.ts';
import { OpenAsk } from '../../src/session/asks-open.ts';
import { Course } from '../../src/session/course.ts';

export function machineFrom(text: string): Machine {
  const read = readMachineFile(text);
  if ('machine' in read) return read.machine;
  throw new Error(JSON.stringify(read.problems));
}

/** What the world does to one input, told by what is pressed and what is unplugged right now. */
export interface Truth {
  readonly level: (world: World) => Level;
  readonly active: (world: World) => Active;
}

export interface World {
  readonly pressed: ReadonlySet<string>;
  readonly out: ReadonlySet<string>;
  readonly held: ReadonlySet<string>;
  /** ms since the stage began. */
  readonly time: number;
}

export interface StageOptions {
  readonly machine: Machine;
  readonly truths: Readonly<Record<string, Truth>>;
  readonly checks?: readonly string[];
  readonly presses?: number;
  readonly start?: number;
  readonly period?: number;
  readonly activity?: (world: World) => Activity;
  /** Overrides what the person says to an ask; undefined: what a willing person says. */
  readonly says?: (ask: Ask, count: number) => Answer | 'nothing' | undefined;
  /** Which subject she really handles when asked for one. */
  readonly handles?: (ask: Ask, subject: string) => string;
}

/** A contact to ground under a pull-up: conducting is L. Unplugged or operated open is H. */
export function contact(
  subject: string,
  kind: 'normally closed' | 'normally open',
  activeWhen: 'open' | 'closed',
): Truth {
  const conducts = ({ pressed, out, held }: World) => {
    if (out.has(subject)) return false;
    const operated = pressed.has(subject) || held.has(subject);
    return kind === 'normally closed' ? !operated : operated;
  };
  return {
    level: (world) => (conducts(world) ? 'L' : 'H'),
    active: (world) => (conducts(world) === (activeWhen === 'closed') ? '1' : '0'),
  };
}

/** Plays a whole course in made time with a willing person, and returns every verdict. */
export function play(options: StageOptions): {
  readonly verdicts: readonly Verdict[];
  readonly asks: readonly Ask[];
} {
  const { machine, truths, presses = 3, start = 0, period = 10, says, handles } = options;
  const chosen: readonly AnyCheck[] = registry.filter(
    ({ name }) => !options.checks || options.checks.includes(name),
  );
  const course = new Course({
    machine,
    checks: chosen,
    presses,
    rest: seconds(2),
    only: undefined,
    explain: possibleCauses,
  });
  const inputs = Object.keys(truths);
  const pressed = new Set<string>();
  const out = new Set<string>();
  const held = new Set<string>();
  const asks: Ask[] = [];
  let now = start;
  const world = (): World => ({ pressed, out, held, time: now - start });
  const report = (): StatusReading => ({
    kind: 'status',
    arrived: ms(now),
    at: ms(now + 5000),
    segment: 1,
    lost: 0,
    inputs,
    axes: [],
    activity: options.activity?.(world()) ?? 'still',
    levels: inputs.map((name) => truths[name]?.level(world()) ?? '?'),
    active: inputs.map((name) => truths[name]?.active(world()) ?? '?'),
    positions: [],
  });
  course.reading({ kind: 'declared', arrived: ms(now), segment: 1, units: 'mm', axes: [], inputs });
  course.reading(report());
  const verdicts: Verdict[] = [...course.start()];
  for (let ask = course.pending; ask; ask = course.pending) {
    if (asks.length > 2000) throw new Error('asked without end');
    asks.push(ask);
    course.put(ms(now));
    const open = new OpenAsk(asks.length, ask, ms(now), course.lastStatus);
    const plan = planFor(
      ask,
      says?.(ask, asks.length),
      (subject) => handles?.(ask as Ask, subject) ?? subject,
    );
    const from = now;
    let end: AskEnd | undefined;
    while (!end) {
      now += period;
      for (const step of plan.splice(0, plan.filter((each) => now - from >= each.after).length))
        step.act({ pressed, out, held }, open, now);
      const reading: Reading = report();
      course.reading(reading);
      open.feed(reading);
      end = open.endAt(ms(now));
    }
    verdicts.push(...course.end(end, ms(now)));
  }
  return { verdicts: verdicts.map((verdict) => course.asThingsAre(verdict)), asks };
}

interface Act {
  readonly after: number;
  readonly act: (
    sets: { pressed: Set<string>; out: Set<string>; held: Set<string> },
    open: OpenAsk,
    now: number,
  ) => void;
}

function planFor(
  ask: Ask,
  said: Answer | 'nothing' | undefined,
  handled: (subject: string) => string,
): Act[] {
  const say = (answer: Answer, after: number): Act => ({
    after,
    act: (_, open, now) => open.say(answer, ms(now)),
  });
  if (said === 'nothing') return [];
  if (said) return [say(said, 200)];
  switch (ask.action) {
    case 'hands-off':
      return [];
    case 'press': {
      const subject = handled(ask.subject);
      return [
        { after: 300, act: ({ pressed }) => pressed.add(subject) },
        { after: 1300, act: ({ pressed }) => pressed.delete(subject) },
        say('done', 2000),
      ];
    }
    case 'release':
      return [{ after: 300, act: ({ held }) => held.delete(ask.subject) }, say('done', 900)];
    case 'unplug':
      return [{ after: 500, act: ({ out }) => out.add(handled(ask.subject)) }, say('done', 700)];
    case 'replug':
      return [{ after: 500, act: ({ out }) => out.delete(handled(ask.subject)) }, say('done', 700)];
    case 'look':
      return ask.topic !== 'touched'
        ? [say('knob-free', 200)]
        : [
            {
              after: 200,
              act: ({ held }, open, now) => open.say(held.has(ask.subject) ? 'yes' : 'no', ms(now)),
            },
          ];
    case 'confirm':
      return [say('yes', 200)];
    default:
      return [say('done', 200)];
  }
}

/** A verdict as `check subject: status kind kind`. */
export const line = ({ check, subject, status, findings }: Verdict): string =>
  `${check} ${subject}: ${[status, ...findings.map((finding) => finding.kind)].join(' ')}`;

export const lines = (verdicts: readonly Verdict[]): readonly string[] => verdicts.map(line);

export type { Ended, Scene, Window };
