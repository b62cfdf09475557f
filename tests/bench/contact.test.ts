import { describe, expect, it } from 'vitest';
import { worn } from '../../src/bench/bounce.ts';
import { Contact } from '../../src/bench/contact.ts';
import { randomFor } from '../../src/bench/random.ts';
import type { ContactKind } from '../../src/bench/truth.ts';
import { virtualTime } from '../../src/bench/virtual-time.ts';
import { ms } from '../../src/model/units.ts';

function mount(kind: ContactKind, seed = 1) {
  const time = virtualTime();
  const changes: { at: number; closed: boolean }[] = [];
  const contact: Contact = new Contact(
    { subject: 's', contact: kind, stop: false },
    time,
    randomFor(seed, 'bounce'),
    () => changes.push({ at: time.now(), closed: contact.conducts }),
  );
  const settle = () => {
    time.after(ms(1000), () => {});
    time.run(() => false);
  };
  return { time, contact, changes, settle };
}

describe('a switch', () => {
  it('conducts at rest and opens when pressed where it is normally closed, the other way where normally open', () => {
    for (const [kind, atRest] of [
      ['normally closed', true],
      ['normally open', false],
    ] as const) {
      const { contact, settle } = mount(kind);
      expect(contact.conducts).toBe(atRest);
      contact.push('hand');
      settle();
      expect(contact.conducts).toBe(!atRest);
      contact.letGo('hand');
      settle();
      expect(contact.conducts).toBe(atRest);
    }
  });

  // 6.2 ms: the longest of sixteen switches measured by J. Ganssle, "A Guide to Debouncing".
  it('bounces for at most 6.2 ms, and ends where it was going', () => {
    let bounced = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const { contact, changes, settle } = mount('normally closed', seed);
      contact.push('hand');
      settle();
      expect(changes[0]).toEqual({ at: 0, closed: false });
      expect(changes.at(-1)?.closed).toBe(false);
      expect(changes.at(-1)?.at).toBeLessThanOrEqual(6.2);
      if (changes.length > 1) bounced++;
    }
    expect(bounced).toBeGreaterThan(50);
  });

  it('worn bounces long enough, and stays long enough each way, to be seen by a report every 10 ms', () => {
    for (let seed = 1; seed <= 50; seed++) {
      const { contact, changes, settle } = mount('normally closed', seed);
      contact.habit = worn;
      contact.push('hand');
      settle();
      const gaps = changes.slice(1).map(({ at }, i) => at - (changes[i]?.at ?? 0));
      expect(gaps.length).toBeGreaterThan(1);
      for (const gap of gaps) expect(gap).toBeGreaterThan(10);
      expect(changes.at(-1)?.closed).toBe(false);
    }
  });

  it('pressed again while it still bounces, ends where the last push left it', () => {
    for (let seed = 1; seed <= 50; seed++) {
      const { time, contact, settle } = mount('normally closed', seed);
      contact.push('hand');
      time.after(ms(1), () => contact.letGo('hand'));
      settle();
      expect(contact.conducts).toBe(true);
    }
  });

  it('stays operated until everything that pushes on it has gone', () => {
    const { contact, settle } = mount('normally closed');
    contact.push('dog');
    contact.push('hand');
    contact.letGo('hand');
    settle();
    expect(contact.conducts).toBe(false);
    expect(contact.touched).toBe(true);
    contact.letGo('dog');
    settle();
    expect(contact.conducts).toBe(true);
  });

  it('that sticks stays in when let go, untouched, and comes out when taken hold of once more', () => {
    const { contact, settle } = mount('normally closed');
    contact.sticks = true;
    contact.push('hand');
    contact.letGo('hand');
    settle();
    expect([contact.conducts, contact.touched, contact.operated]).toEqual([false, false, true]);
    contact.letGo('hand');
    settle();
    expect(contact.conducts).toBe(true);
    contact.push('hand');
    contact.letGo('hand');
    contact.push('hand');
    contact.letGo('hand');
    settle();
    expect(contact.conducts).toBe(true);
  });

  it('that slips answers every other push of a hand', () => {
    const { contact, settle } = mount('normally closed');
    contact.slips = true;
    const answered = [1, 2, 3, 4].map(() => {
      contact.push('hand');
      settle();
      const opened = !contact.conducts;
      contact.letGo('hand');
      settle();
      return opened;
    });
    expect(answered).toEqual([true, false, true, false]);
  });
});
