import { beforeAll, describe, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import type { Ask } from '../../src/model/ask.ts';
import {
  found,
  remove,
  temporaryFolder,
  type VirtualOutcome,
  workplace,
} from '../session/virtual-session.ts';
import { everyFormat } from './every-way-out.ts';

const session = { presses: 1, restSeconds: 2 };
const cannotPutBack = (ask: Ask) => (ask.action === 'replug' ? ('cannot' as const) : undefined);

/** On a sound machine, so that nothing but the open plugs can spoil a verdict. */
describe('a person who cannot put any plug back', () => {
  const folder = temporaryFolder();
  const place = workplace();
  let outcome: VirtualOutcome;

  beforeAll(async () => {
    outcome = await place.session({ folder, session, hands: { saysInstead: cannotPutBack } });
    return () => {
      place.leave();
      remove(folder);
    };
  }, 60_000);

  const pulled = () => outcome.facts.register.map(({ subject }) => subject);

  it('leaves each plug she pulled in the register of what is out', () => {
    // The hatch hangs in one chain with the flap: with that open nobody was asked to pull it.
    expect(pulled().toSorted()).toEqual(
      ['doors/flap', 'probe', 'stop', 'x-far', 'x-home', 'y-far', 'y-home', 'z-home'].toSorted(),
    );
  });

  it('has nothing proved of anything, not even what was proved before', () => {
    expect(found(outcome).filter((line) => line.includes(': proved'))).toEqual([]);
  });

  it('has each broken-wire question open, with what is out beside it', () => {
    for (const subject of pulled())
      expect(found(outcome)).toContain(`open-wire ${subject}: inconclusive still-out`);
  });

  it('leaves with another code than 0, and the last line says so', () => {
    expect(outcome.exit).not.toBe(0);
    expect(outcome.events.at(-1)).toMatchObject({ kind: 'finished', exit: outcome.exit });
  });

  it('was kept told of what was out, from the second plug on to the end', () => {
    const told = outcome.events.flatMap((event) =>
      event.kind === 'notice' && event.topic === 'something-out' ? [event.text] : [],
    );
    expect(told[0]).toMatch(/^Still out: /);
    const last = told.at(-1) ?? '';
    for (const { place } of outcome.facts.machine.inputs.flatMap((input) => input.switches))
      if (place !== undefined && !place.includes('hatch')) expect(last).toContain(place);
  });

  it('was asked once more for each before the end', () => {
    const again = outcome.events.flatMap((event) =>
      event.kind === 'ask' && event.ask.action === 'replug' && event.ask.why === 'still-out'
        ? [event.ask.subject]
        : [],
    );
    expect(again.toSorted()).toEqual(pulled().toSorted());
  });

  it('reads it in every form of the record, plug by plug', () => {
    const ways = everyFormat(outcome.facts);
    expect([...ways.keys()]).toEqual(['report md', 'report html', 'report json', 'report csv', 'summary']);
    for (const [name, text] of ways) {
      expect(text, name).toMatch(/still[- ](out|unplugged)/i);
      for (const subject of pulled()) expect(text, `${name}, ${subject}`).toContain(subject);
    }
  });

  it('may put them back and go on: then all is proved that was', async () => {
    const resumed = await place.session({ folder, session: { ...session, resume: true } });
    expect(resumed.facts.register).toEqual([]);
    expect(found(resumed).filter((line) => !line.endsWith(': proved'))).toEqual([]);
    expect(resumed.exit).toBe(0);
  });
});

describe('a plug pulled at the controller', () => {
  it('takes its whole connector along: no switch on it is blamed, nor asked to be pulled, while it is out', async () => {
    const folder = temporaryFolder();
    const place = workplace();
    const machineText = scenarioFile.replaceAll('reach: by hand', 'reach: controller only');
    const saysInstead = (ask: Ask) =>
      ask.action === 'replug' && ask.subject === 'x-home' ? ('cannot' as const) : undefined;
    const outcome = await place.session({
      folder,
      session: { ...session, machineText },
      hands: { saysInstead },
    });
    const lines = found(outcome);
    for (const subject of ['x-far', 'y-home']) expect(lines).toContain(`open-wire ${subject}: inconclusive`);
    expect(lines.filter((line) => /failed|: proved/.test(line))).toEqual([]);
    const pulled = outcome.events.flatMap((event) =>
      event.kind === 'ask' && event.ask.action === 'unplug' ? [event.ask.subject] : [],
    );
    expect(pulled).not.toContain('x-far');
    const resumed = await place.session({ folder, session: { ...session, machineText, resume: true } });
    expect(found(resumed).filter((line) => !line.endsWith(': proved'))).toEqual([]);
    place.leave();
    remove(folder);
  }, 60_000);
});
