import { describe, expect, it } from 'vitest';
import { scenarioFile } from '../../src/bench/scenario.ts';
import { earlierEvidence } from '../../src/diagnose/cause-finding/earlier.ts';
import type { Answer, Ask } from '../../src/model/ask.ts';
import { replay } from '../../src/session/replay.ts';
import { asksIn, remove, temporaryFolder, virtualSession, workplace } from '../session/virtual-session.ts';
import { causeEvents, causeIn, orderOf, searched } from './searched.ts';

const broken = { faults: ['broken-wire:x-home'] };
const always =
  (answer: Answer, when: (ask: Ask) => boolean) =>
  (ask: Ask): Answer | undefined =>
    when(ask) ? answer : undefined;

const isConditional = (ask: Ask): boolean =>
  ask.action === 'power' || (ask.action === 'confirm' && ask.topic === 'propped') || ask.action === 'replug';

describe('a search comes to an end whatever is answered', () => {
  it('without a meter: none is asked for again, and what no hand tells apart is named together', async () => {
    const outcome = await searched({
      bench: broken,
      hands: { saysInstead: always('cannot', (ask) => ask.action === 'measure') },
    });
    expect(asksIn(outcome).filter(({ ask }) => ask.action === 'measure')).toHaveLength(1);
    const { causes } = causeIn(outcome);
    expect(causes).toContainEqual(['signal-core-open']);
    expect(causes.length).toBeGreaterThan(1);
  }, 120_000);

  it.each(['not-sure', 'cannot', 'skip'] as const)(
    'with "%s" to all but what the work needs, it ends with nothing named alone and nothing out',
    async (answer) => {
      const outcome = await searched({
        bench: broken,
        hands: { saysInstead: always(answer, (ask) => !isConditional(ask) && ask.action !== 'hands-off') },
      });
      const { ended, causes } = causeIn(outcome);
      expect(ended).toBe('inseparable');
      expect(causes).toContainEqual(['signal-core-open']);
      expect(outcome.facts.register).toEqual([]);
    },
    120_000,
  );

  it('without motor power off nothing is asked that needs a hand', async () => {
    const outcome = await searched({
      hands: { saysInstead: always('cannot', ({ action }) => action === 'power') },
    });
    expect(asksIn(outcome).map(({ ask }) => ask.action)).toEqual(['power']);
    expect(outcome.exit).toBe(2);
  }, 120_000);
});

describe('no link is asked for', () => {
  const without = (line: RegExp) => scenarioFile.replace(line, '');
  const own = /(x-home:[\s\S]*?)( {4}circuit: [^\n]*\n)([\s\S]*?)( {4}voltage: 5 V\n)/;

  it.each([
    ['where the voltage is told to be unknown', scenarioFile.replace(own, '$1$2$3    voltage: unknown\n')],
    ['where the circuit is not declared', scenarioFile.replace(own, '$1$3$4')],
    ['above 30 V', scenarioFile.replace(own, '$1$2$3    voltage: 48 V\n')],
  ])(
    '%s',
    async (_, machineText) => {
      const outcome = await searched({ bench: broken, session: { machineText } });
      expect(asksIn(outcome).map(({ ask }) => ask.action)).not.toContain('jumper');
      expect(causeIn(outcome).causes.flat()).toContain('signal-core-open');
    },
    120_000,
  );

  it('without a circuit on file, and says which it thought of', async () => {
    const machineText = without(/ {4}circuit: [^\n]*\n/);
    const outcome = await searched({
      bench: { faults: ['polarity-reversed:x-home'] },
      session: { machineText },
    });
    const { assumed, wirings, causes } = causeIn(outcome);
    expect(assumed).toEqual(['circuit']);
    expect(wirings).toEqual([{ name: 'normally-closed-to-ground', contact: 'normally closed' }]);
    expect(causes).toContainEqual(['polarity-inverted']);
  }, 120_000);

  it('with an unknown contact, and both kinds are thought of', async () => {
    const machineText = scenarioFile.replace(/(x-home:[\s\S]*?contact: )normally closed/, '$1unknown');
    const outcome = await searched({ bench: { faults: ['welded:x-home'] }, session: { machineText } });
    const { assumed, wirings, causes } = causeIn(outcome);
    expect(assumed).toEqual(['contact']);
    expect(wirings.map(({ contact }) => contact)).toEqual(['normally closed', 'normally open']);
    expect(causes.flat()).toContain('contact-welded');
  }, 120_000);
});

describe('a search is a session like any other', () => {
  it('tells the cause as an event, and a replay of its folder gives the same', async () => {
    const folder = temporaryFolder();
    const outcome = await searched({ folder, bench: { faults: ['polarity-reversed:x-home'] } });
    const [told] = causeEvents(outcome.events);
    expect(told?.cause).toEqual(causeIn(outcome));
    expect(causeIn({ facts: replay(folder).facts })).toEqual(causeIn(outcome));
    remove(folder);
  }, 120_000);

  it('stopped half-way it tells how far it came, and goes on to the same cause', async () => {
    const folder = temporaryFolder();
    const place = workplace(broken);
    const session = { checks: ['press', 'open-wire'] as const, only: ['x-home'], search: orderOf('x-home') };
    const first = await place.session({
      folder,
      session,
      stopAt: (event) => event.kind === 'ask' && event.ask.action === 'jumper',
    });
    expect(causeIn(first).ended).toBe('stopped');
    expect(first.exit).toBe(2);
    const { search: _, ...rest } = session;
    const then = await place.session({ folder, session: { ...rest, machineText: undefined, resume: true } });
    expect(asksIn(then)[0]?.ask).toMatchObject({ check: 'resume', topic: 'still-out', subject: 'x-home' });
    place.leave();
    const whole = await searched({ bench: broken });
    expect(causeIn(then).causes).toEqual(causeIn(whole).causes);
    expect(then.facts.register).toEqual([]);
    remove(folder);
  }, 120_000);

  it('once it is mended the press and the plug are tested again, and prove the fix', async () => {
    const folder = temporaryFolder();
    const place = workplace({ faults: ['polarity-reversed:x-home'] });
    const outcome = await place.session({
      folder,
      session: { checks: ['press', 'open-wire'], only: ['x-home'], search: orderOf('x-home') },
      hands: {
        saysInstead: (ask) => {
          if (ask.action !== 'confirm' || ask.topic !== 'mended') return undefined;
          // Turned round once more, the setting is right again.
          place.bench.plant('polarity-reversed:x-home');
          return 'yes';
        },
      },
    });
    place.leave();
    const status = (check: string) => outcome.facts.verdicts.find((each) => each.check === check)?.status;
    expect([status('troubleshoot'), status('press'), status('open-wire')]).toEqual([
      'failed',
      'proved',
      'proved',
    ]);
    remove(folder);
  }, 120_000);

  it('says of what it asks for once more that it is not new, and of nothing else', async () => {
    const outcome = await searched({ bench: { faults: ['slips:x-home'] } });
    const deeds = causeIn(outcome).evidence.map(({ deed }) => deed);
    const twice = deeds.filter((deed, at) => deeds.indexOf(deed) < at);
    const asks = asksIn(outcome).filter(({ ask }) => 'onceMore' in ask);
    expect(twice.length).toBeGreaterThan(0);
    expect(asks.length).toBe(twice.length);
    for (const { text } of asks) expect(text).toMatch(/^Once more, for/);
  }, 120_000);

  it('begins from what a commissioning has seen, and does not ask for it again', async () => {
    const folder = temporaryFolder();
    const commissioned = await virtualSession({ folder, bench: broken });
    const { verdicts, machine } = commissioned.facts;
    remove(folder);
    const order = earlierEvidence(verdicts, machine, 'x-home');
    expect(order.earlier).toContainEqual({ deed: 'rest', outcome: 'open 1' });
    expect(order.earlier).toContainEqual({ deed: 'press', outcome: 'still' });
    expect(earlierEvidence(verdicts, machine, 'y-home')).toMatchObject({ history: 'worked', earlier: [] });
    const from = await searched({ bench: broken, order });
    const { causes, evidence } = causeIn(from);
    expect(causes.flat()).toContain('signal-core-open');
    const asked = evidence.flatMap(({ deed, earlier }) => (earlier ? [] : [deed]));
    for (const { deed } of order.earlier) if (deed !== 'rest') expect(asked).not.toContain(deed);
  }, 180_000);

  it('knows from a commissioning which other input answered', async () => {
    const folder = temporaryFolder();
    const { facts } = await virtualSession({ folder, bench: { faults: ['crossed:x-home,y-home'] } });
    remove(folder);
    expect(earlierEvidence(facts.verdicts, facts.machine, 'x-home').beside).toBe('y-home');
    expect(earlierEvidence(facts.verdicts, facts.machine, 'x-far').beside).toBeUndefined();
  }, 180_000);
});
