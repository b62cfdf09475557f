import { renderToString } from 'preact-render-to-string';
import { sectionWords } from '../words/record-words.ts';
import { Blocks } from './html/blocks.tsx';
import { style } from './html/style.ts';
import type { ReportRecord } from './record.ts';
import { sectionsOf } from './sections/all.ts';
import { titleOf, whenOf } from './title.ts';

/** Nothing may load, run or leave: the page holds all it needs. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

/** The record as one HTML file, for the screen and for A4 paper. */
export function html(record: ReportRecord): string {
  const sections = sectionsOf(record);
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={policy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light" />
        <title>{titleOf(record)}</title>
        <style dangerouslySetInnerHTML={{ __html: style }} />
      </head>
      <body>
        <header>
          <p class="kind">Commissioning record</p>
          <h1>{record.machine.name}</h1>
          <p class="when">{whenOf(record)}</p>
        </header>
        <nav aria-label="Sections">
          {sections.map(({ id, heading }) => (
            <a key={id} href={`#${id}`}>
              {heading}
            </a>
          ))}
        </nav>
        <main>
          {sections.map(({ id, heading, stress, blocks }) => (
            <section key={id} id={id} class={stress ?? ''}>
              <h2>{heading}</h2>
              <Blocks blocks={blocks} id={id} />
            </section>
          ))}
        </main>
        <footer>{sectionWords.untested.opening}</footer>
      </body>
    </html>
  );
  return `<!doctype html>\n${renderToString(page)}\n`;
}
