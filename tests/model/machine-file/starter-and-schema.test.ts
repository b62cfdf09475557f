import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { machineSchema } from '../../../src/model/machine-file/json-schema.ts';
import { readMachineFile } from '../../../src/model/machine-file/read.ts';
import { starterFile } from '../../../src/model/machine-file/starter.ts';
import { engraver } from './engraver.ts';

/** Entries that stand behind a comment sign in the starter: what a person would take the sign away from. */
const withEntries = (starter: string): string =>
  starter.replace(/^( *)# (?=[a-z][a-z -]*:)/gm, '$1').replace(/^ {2}# {2}/gm, '    ');

describe('the starter file', () => {
  it('reads without a problem as it stands', () => {
    expect(readMachineFile(starterFile()).problems).toBeUndefined();
  });

  it('states nothing as known that only the owner can know', () => {
    const [input] = readMachineFile(starterFile()).machine?.inputs ?? [];
    expect(input?.polarity).toBe('unknown');
    expect(input?.switches[0]).toMatchObject({
      contact: 'unknown',
      voltage: { known: 'told-unknown' },
      end: undefined,
      circuit: undefined,
    });
  });

  it('still reads when every entry in its comments is taken in', () => {
    const all = withEntries(starterFile());
    expect(all).not.toMatch(/^ *# [a-z -]+:/m);
    expect(readMachineFile(all).problems).toBeUndefined();
    expect(readMachineFile(all).machine?.inputs.map((input) => input.name)).toEqual([
      'x-home',
      'y-limits',
      'stop',
    ]);
  });

  it('names every entry the format knows', () => {
    const { properties } = machineSchema as { properties: Record<string, never> };
    const keys = new Set<string>();
    JSON.stringify(properties, (key, value) => {
      if (key === 'properties') for (const each of Object.keys(value)) keys.add(each);
      return value;
    });
    // Values of circuits are listed where circuits are.
    const circuit = [
      'logic supply',
      'pull-down',
      'series',
      'bleed',
      'divider',
      'load',
      'cable',
      'end resistor',
      'contact resistor',
      'filter',
      'drop',
      'led drop',
      'leakage',
    ];
    expect([...keys].filter((key) => !circuit.includes(key) && !starterFile().includes(`${key}:`))).toEqual([
      'motor',
    ]);
  });
});

describe('the JSON Schema of a machine file', () => {
  // Read back by another way than it was made: from the schema's own text to a validator.
  const accepts = (text: string): boolean =>
    z.fromJSONSchema(JSON.parse(JSON.stringify(machineSchema))).safeParse(parse(text)).success;

  it('accepts what reads without a problem', () => {
    for (const text of [starterFile(), withEntries(starterFile()), engraver]) {
      expect(readMachineFile(text).problems).toBeUndefined();
      expect(accepts(text)).toBe(true);
    }
  });

  it.each([
    ['no axes', 'machine: m\n'],
    ['no name', 'axes: {}\n'],
    ['an input without a duty', 'machine: m\naxes: {}\ninputs: {a: {axis: X}}\n'],
    [
      'a switch without a duty',
      'machine: m\naxes: {}\ninputs: {a: {joined: series, switches: {b: {axis: X}}}}\n',
    ],
    ['an unknown key', 'machine: m\naxes: {}\ninputs: {a: {duty: [limit], contct: unknown}}\n'],
    ['a wrong word', 'machine: m\naxes: {}\nunits: ell\n'],
    ['a wrong name', 'machine: m\naxes: {}\ninputs: {A_b: {duty: [limit]}}\n'],
    ['a voltage without its unit', 'machine: m\naxes: {}\ninputs: {a: {duty: [limit], voltage: 5}}\n'],
    ['a wrong unit', 'machine: m\naxes: {X: {travel: 3 V}}\n'],
    ['a letter that is no axis', 'machine: m\naxes: {Q: {}}\n'],
  ])('refuses %s, as the reader does', (_, text) => {
    expect(readMachineFile(text).problems).toBeDefined();
    expect(accepts(text)).toBe(false);
  });

  it('says what each entry means, for editors that show it', () => {
    const bare: string[] = [];
    const look = (schema: unknown, path: string): void => {
      const { properties, ...rest } = (schema ?? {}) as {
        properties?: Record<string, { description?: string }>;
      };
      for (const [key, each] of Object.entries(properties ?? {})) {
        if (each.description === undefined && key !== 'inputs' && key !== 'switches')
          bare.push(`${path}.${key}`);
        look(each, `${path}.${key}`);
      }
      for (const each of Object.values(rest)) if (typeof each === 'object') look(each, path);
    };
    look(machineSchema, '');
    expect(bare).toEqual([]);
  });
});
