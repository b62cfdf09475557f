import { describe, expect, it } from 'vitest';
import { seeded } from '../../../src/diagnose/circuit/random.ts';
import { circuitNamed, circuits } from '../../../src/diagnose/circuit/registry.ts';
import { wiringOf } from '../../../src/diagnose/circuit/wiring.ts';
import { compareWirings } from '../../../src/diagnose/fault-finding/compare.ts';
import { studyWiring } from '../../../src/diagnose/fault-finding/study.ts';
import type { WiringName } from '../../../src/model/wiring-names.ts';
import type { WiringStudy } from '../../../src/model/wiring-study.ts';
import { renderComparison, renderStudy, wiringFormats } from '../../../src/report/wiring/render.ts';
import { faultWords } from '../../../src/words/wiring/fault-words.ts';
import { studyStatements } from '../../../src/words/wiring/study-words.ts';

const study = (name: WiringName): WiringStudy =>
  studyWiring({ wiring: wiringOf(circuitNamed(name)) }, seeded(1), 10);
const closed = study('normally-closed-to-ground');

const tooWide = (text: string): readonly string[] => text.split('\n').filter((line) => line.length > 80);

describe('the document of a wiring', () => {
  it.each(wiringFormats.filter((format) => format !== 'json'))(
    'in %s names the definition and that no level follows',
    (format) => {
      const text = renderStudy(closed, format).replaceAll(/\s+/g, ' ');
      expect(text).toContain('ISO 13849-1');
      expect(text).toContain('No performance level follows');
      expect(text).toContain('Computed from the circuit, not measured on a machine.');
    },
  );

  it.each(wiringFormats)('in %s has every fault', (format) => {
    const text = renderStudy(closed, format).replaceAll(/\s+/g, ' ');
    for (const { fault } of closed.faults)
      expect(text).toContain(format === 'json' ? fault : faultWords[fault].title);
  });

  it('as JSON can be read back, with nothing where a part is left out', () => {
    const read = JSON.parse(renderStudy(study('contact-into-fed-optocoupler'), 'json'));
    const bleed = read.wiring.values.find(({ name }: { name: string }) => name === 'bleed');
    expect(bleed.nominal).toBeNull();
    expect(read.coverage.worked.atOnce).toBeGreaterThan(0);
  });

  it('is the same text each time', () => {
    const again = study('normally-closed-to-ground');
    for (const format of wiringFormats) expect(renderStudy(again, format)).toBe(renderStudy(closed, format));
  });

  it('keeps to a terminal of 80 columns', () => expect(tooWide(renderStudy(closed, 'text'))).toEqual([]));
});

describe('the drawing of a wiring', () => {
  it.each(circuits.map(({ name }) => name))(
    '%s: three states, each with title and words, its computed voltages on it',
    (name) => {
      const studied = study(name);
      const html = renderStudy(studied, 'html');
      expect(html.match(/<svg [^>]*viewBox="0 0 640 330"/g)).toHaveLength(3);
      expect(html.match(/<title id=/g)).toHaveLength(3);
      expect(html.match(/<desc id=/g)).toHaveLength(3);
      for (const { volts } of studied.states) {
        const pin = volts.find(({ node }) => node === 'pin')?.volts;
        expect(html).toContain(
          `>${pin === undefined ? 'floats' : `${pin.toFixed(pin < 0.9995 ? 3 : 2)} V`}</text>`,
        );
      }
    },
  );

  it('is black and grey alone', () => {
    const drawings = renderStudy(closed, 'html').match(/<svg [\s\S]*?<\/svg>/g) ?? [];
    const colours = drawings.flatMap((each) => each.match(/(?:stroke|fill)="#[0-9a-f]+"/g) ?? []);
    expect(colours.length).toBeGreaterThan(20);
    for (const colour of new Set(colours)) {
      const [, digits = ''] = /#([0-9a-f]+)/.exec(colour) ?? [];
      expect(new Set(digits.match(digits.length === 3 ? /./g : /../g)).size).toBe(1);
    }
  });
});

describe('wirings side by side', () => {
  const comparison = compareWirings([study('normally-open-to-ground'), closed]);
  const many = compareWirings(
    (
      [
        'normally-open-to-ground',
        'normally-closed-to-ground',
        'normally-open-to-supply',
        'normally-closed-to-supply',
        'contact-into-fed-optocoupler',
        'pnp-into-optocoupler',
        'npn-into-pull-up',
        'closed-contacts-in-series',
        'touch-probe',
        'hall-module',
      ] as const
    ).map(study),
  );

  it('keep to a terminal of 80 columns, however many they are', () =>
    expect(tooWide(renderComparison(many, 'text'))).toEqual([]));

  it('stand in columns: each letter of the head has its code below it', () => {
    const lines = renderComparison(many, 'text').split('\n');
    const at = lines.findIndex((line) => /^Fault +A +B/.test(line));
    const columns = [...(lines[at] ?? '').matchAll(/ ([A-J])(?= |$)/g)].map(({ index }) => index + 1);
    expect(columns).toHaveLength(9);
    const body = lines.slice(at + 2, lines.indexOf('', at));
    const rows = body.filter((line) => line.slice(columns[0]).trim() !== '');
    expect(rows.length).toBeGreaterThan(20);
    for (const row of rows)
      for (const column of columns)
        expect(row.slice(column, column + 6).trim()).toMatch(/^(once|next|pull|NO|mild|-)$/);
  });

  it('have one row for what is one fault to a reader, to 0 V in one wiring and fed in another', () => {
    const rows = renderComparison(many, 'md').match(/^\| Signal touches \+ .*$/gm);
    expect(rows).toHaveLength(1);
  });

  it.each(wiringFormats.filter((format) => format !== 'json'))(
    'in %s say which is best and what it still misses',
    (format) => {
      const text = renderComparison(comparison, format).replaceAll(/\s+/g, ' ');
      expect(text).toContain('A: normally closed contact to 0 V');
      expect(text).toContain('What even this one does not find at rest');
      for (const fault of comparison.stillMissed) expect(text).toContain(faultWords[fault].title);
      expect(text).toContain(studyStatements.coverage.slice(0, 40));
    },
  );
});
