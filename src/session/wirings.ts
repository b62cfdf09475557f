import { seeded } from '../diagnose/circuit/random.ts';
import { type DeclaredWiring, wiringOfSwitch } from '../diagnose/circuit/select.ts';
import { studyWiring } from '../diagnose/fault-finding/study.ts';
import { allSwitches, type Contact, type Machine, type Subject, type Switch } from '../model/machine.ts';
import type { Verdict } from '../model/verdict.ts';
import type { MachineWiring, WiredSwitch, WiringStudy } from '../model/wiring-study.ts';

/** Boards drawn from the tolerances; the same ones every time. */
const boards = 100;
const seed = 1;

/**
 * What each declared circuit of a machine does under every fault, computed once for all switches that have the same. A contact that unplugging
 * found stands in place of the declared one. Switches whose circuit is not known, or cannot be computed, are left out.
 */
export function wiringsOf(machine: Machine, verdicts: readonly Verdict[]): readonly MachineWiring[] {
  const found = new Map<string, { study: WiringStudy; switches: WiredSwitch[] }>();
  for (const each of allSwitches(machine)) {
    const contact = contactFound(each.subject, verdicts);
    const declared = wiringOfSwitch(machine, withContact(each, contact));
    if (!declared) continue;
    const key = keyOf(declared);
    const study = studied(declared, key);
    if (!study) continue;
    const same = found.get(key) ?? { study, switches: [] };
    found.set(key, same);
    same.switches.push({ subject: each.subject, contactFrom: contactFrom(each, contact) });
  }
  return [...found.values()];
}

const contactFound = (subject: Subject, verdicts: readonly Verdict[]): Contact | undefined =>
  verdicts.find((each) => each.check === 'open-wire' && each.subject === subject)?.facts.contactFound;

const withContact = (each: Switch, contact: Contact | undefined): Switch =>
  contact === undefined ? each : { ...each, contact };

function contactFrom(each: Switch, found: Contact | undefined): WiredSwitch['contactFrom'] {
  if (found !== undefined) return 'found';
  return each.contact === 'unknown' ? 'assumed' : 'declared';
}

/** All that a study depends on. JSON has no infinity: a part left out is null there, and no given value is. */
const keyOf = ({ wiring: { circuit, contact, family, values, unused }, given }: DeclaredWiring): string =>
  JSON.stringify([circuit.name, contact, family, values, unused, given]);

/** A study takes a good part of a second, and the sessions of one machine have the same few wirings. */
const known = new Map<string, WiringStudy | undefined>();

function studied(declared: DeclaredWiring, key: string): WiringStudy | undefined {
  if (!known.has(key)) known.set(key, computed(declared));
  return known.get(key);
}

/** Undefined where the parts told make a short of the supply: a report is still to be written. */
function computed({ wiring, given }: DeclaredWiring): WiringStudy | undefined {
  try {
    return studyWiring({ wiring, given }, seeded(seed), boards);
  } catch (cause) {
    if (cause instanceof RangeError) return undefined;
    throw cause;
  }
}
