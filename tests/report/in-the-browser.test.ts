import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildRecord } from '../../src/report/build-record.ts';
import { html } from '../../src/report/html.ts';
import { hostile, markup } from './hostile.ts';
import { watched } from './watched.ts';
import { weekend } from './weekend.ts';

const browserPath = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].find(
  existsSync,
);
const quiet = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

it('has a browser where the project is built for others', () => {
  if (process.env.CI === 'true') expect(browserPath, 'install chromium').toBeDefined();
});

describe.skipIf(browserPath === undefined)('the HTML report in a browser (needs chromium)', () => {
  const folder = mkdtempSync(join(tmpdir(), 'record-'));
  let browser: Browser;

  beforeAll(async () => {
    if (browserPath) browser = await chromium.launch({ executablePath: browserPath, args: quiet });
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true });
  });

  /** Opens a report from disk and hands back the page with all it said and asked for. */
  async function opened(
    name: string,
    text: string,
  ): Promise<{ page: Page; said: string[]; asked: string[] }> {
    const file = join(folder, `${name}.html`);
    writeFileSync(file, text);
    const page = await browser.newPage({ viewport: { width: 1100, height: 900 } });
    const said: string[] = [];
    const asked: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    page.on('dialog', (dialog) => {
      said.push(dialog.message());
      void dialog.dismiss();
    });
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(pathToFileURL(file).href, { waitUntil: 'load' });
    await page.waitForTimeout(200);
    return { page, said, asked };
  }

  it.each([
    ['weekend', weekend],
    ['hostile', hostile],
    ['watched', watched],
  ])('%s: says nothing, asks for nothing, runs nothing', async (name, facts) => {
    const { page, said, asked } = await opened(name, html(buildRecord(facts)));
    expect(said).toEqual([]);
    expect(asked).toHaveLength(1);
    const forbidden =
      'script, img, iframe, object, embed, link, form, input, base, audio, video, foreignObject';
    expect(await page.locator(forbidden).count()).toBe(0);
    const attributes = await page.evaluate(
      `[...document.querySelectorAll('*')].flatMap((each) => each.getAttributeNames())`,
    );
    expect((attributes as string[]).filter((each) => each.startsWith('on'))).toEqual([]);
    await page.close();
  });

  it('shows hostile words as words', async () => {
    const { page } = await opened('hostile', html(buildRecord(hostile)));
    const text = await page.locator('main').textContent();
    expect(text).toContain(markup);
    expect(text).toContain('\\x1b[31mred');
    expect(await page.title()).toContain(markup);
    await page.close();
  });

  it('would hear a page that does load, log or run something', async () => {
    const loud = '<img src="http://127.0.0.1:9/x.png"><script>console.log("loud")</script>';
    const { page, said, asked } = await opened('loud', loud);
    expect(said).toContain('loud');
    expect(asked.length).toBeGreaterThan(1);
    await page.close();
  });

  it('keeps every table and drawing within the width of the page, on the screen and on paper', async () => {
    const { page } = await opened('weekend', html(buildRecord(weekend)));
    for (const width of [1100, 794]) {
      await page.setViewportSize({ width, height: 900 });
      if (width === 794) await page.emulateMedia({ media: 'print' });
      const wide = await page.evaluate(
        `[...document.querySelectorAll('table, figure, p, h2')].filter((each) => each.getBoundingClientRect().right > innerWidth + 1).length`,
      );
      expect(wide).toBe(0);
    }
    await page.close();
  });

  it('prints its text in black and grey with enough contrast', async () => {
    const { page } = await opened('weekend', html(buildRecord(weekend)));
    const colours = await page.evaluate(
      `[...new Set([...document.querySelectorAll('body *')].map((each) => getComputedStyle(each).color))]`,
    );
    // Relative luminance and the ratio of 4.5 to 1 as in WCAG 2.1, 1.4.3 (formula from memory).
    for (const colour of colours as string[]) {
      const channels = (colour.match(/\d+/g) ?? []).slice(0, 3).map((each) => {
        const part = Number(each) / 255;
        return part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      });
      const [r = 0, g = 0, b = 0] = channels;
      expect(1.05 / (0.2126 * r + 0.7152 * g + 0.0722 * b + 0.05), colour).toBeGreaterThan(4.5);
    }
    await page.close();
  });

  it('is nowhere green', async () => {
    const { page } = await opened('weekend', html(buildRecord(weekend)));
    const colours = await page.evaluate(
      `[...new Set([...document.querySelectorAll('*')].flatMap((each) => { const s = getComputedStyle(each); return [s.color, s.backgroundColor, s.borderLeftColor, s.fill, s.stroke]; }))]`,
    );
    for (const colour of colours as string[]) {
      const [r = 0, g = 0, b = 0] = (colour.match(/\d+/g) ?? []).map(Number);
      expect(g > r + 10 && g > b + 10, colour).toBe(false);
    }
    await page.close();
  });
});
