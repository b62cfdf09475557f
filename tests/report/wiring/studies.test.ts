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

  it('keeps to a hundred columns in a terminal', () => {
    const wide = renderStudy(closed, 'text')
      .split('\n')
      .filter((line) => line.length > 100);
    expect(wide).toEqual([]);
  });
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
