import { describe, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { formats } from '../../src/report/formats.ts';
import { parseRecord } from '../../src/report/record.ts';
import { summaryText } from '../../src/report/summary-text.ts';
import { markup } from './hostile.ts';
import { homingTrack } from './tracks.ts';
import { watched } from './watched.ts';

const record = buildRecord(watched);
const html = formats.html(record).text;
const md = formats.md(record).text;
const text = (page: string) =>
  page
    .replace(/<[^>]+>/g, ' ')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&')
    .replace(/\s+/g, ' ');

describe('the record of watched axes', () => {
  it('reads back from its JSON as it was written', () => {
    expect(parseRecord(formats.json(record).text)).toEqual(record);
  });

  it.each([
    ['the frame in plain words', 'left-handed frame, determinant −1. Parts come out as in a mirror'],
    ['trips with the doubt about their place', '−0.7 to −0.2 mm'],
    ['a trip of a switch that the way does not lead to', 'plate trips: not the switch of this way'],
    ['the moment the person was told to stop', 'the person was told to stop it'],
    ['the expected way', 'Expected way: positive, toward its switch.'],
    [
      'the definition beside the repeatability',
      'unidirectional repeatability as ISO 230-2 defines it: four times',
    ],
    ['the interval of the standard deviation', 'between 0.007 mm and 0.019 mm (chi-square'],
    ['the stop against its room', 'the share of the switch’s overtravel that a stop may use'],
    ['the speed that still stops in time', '27.2 mm/s (1632 mm/min)'],
    ['the hard stop and how it is known', 'hard stop −5 mm, measured'],
    ['the lines of the program that go furthest', '58 mm (line 12) to 431 mm (line 208)'],
    ['a line of the program that was not understood', 'a formula'],
    ['the likely cause of a wrong scale', 'lead of the screw: set 4 mm, real 5 mm'],
    ['the corrected steps', '639.488'],
    ['that positions are commanded', 'Positions are what the controller commanded, not where the tool was'],
    ['what is reported and not acted on', 'the controller acted on the trip'],
  ])('says in HTML and in Markdown alike: %s', (_what, said) => {
    expect(text(html)).toContain(said);
    expect(text(md).replace(/\\/g, '')).toContain(said);
  });

  it('has a row for each axis on the first page, and lists what of each was not watched', () => {
    expect(md).toMatch(/\| X axis \| ○ Not tested \| ■ Proved \|/);
    expect(record.untested).toContainEqual(
      expect.objectContaining({ check: 'homing', subject: 'Z', what: 'Homing: Z axis' }),
    );
    expect(record.untested.some(({ check, subject }) => check === 'homing' && subject === 'X')).toBe(false);
    expect(summaryText(record)).toMatch(/X axis\n {4}homing proved/);
  });

  it('keeps a hostile input name text in every drawing and table', () => {
    const trips = homingTrack.trips.map((trip) => ({ ...trip, input: `${markup}\u001b[31m` }));
    const tracks = [{ ...homingTrack, trips }];
    const verdicts = watched.verdicts.map((each) =>
      each.check === 'homing' ? { ...each, facts: { ...each.facts, tracks } } : each,
    );
    const page = formats.html(buildRecord({ ...watched, verdicts })).text;
    expect(page).not.toContain(markup);
    expect(page).not.toContain('\u001b');
    expect(page).toContain('&lt;img src=x onerror=1');
  });

  it('says NOT TESTED under every motion heading of a session that watched none', () => {
    const none = formats.md(
      buildRecord({ ...watched, verdicts: watched.verdicts.filter(({ check }) => check === 'press') }),
    ).text;
    for (const heading of [
      'Coordinate sketch',
      'Motion, axis by axis',
      'Homing',
      'Repeatability',
      'Stopping distance',
      'Envelope',
      'Scale and backlash',
    ])
      expect(none).toMatch(new RegExp(`## ${heading}\n\nNOT TESTED\\.`));
  });
});
