import { renderToString } from 'preact-render-to-string';
import type { Section } from '../document.ts';
import { Blocks } from './blocks.tsx';
import { style } from './style.ts';

/** Nothing may load, run or leave: the page holds all it needs. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'";

export interface Page {
  readonly title: string;
  /** What sort of paper it is, above its heading. */
  readonly sort: string;
  readonly heading: string;
  readonly when: string;
  readonly sections: readonly Section[];
  readonly footer: string;
}

/** Sections as one HTML file, for the screen and for A4 paper. */
export function htmlPage({ title, sort, heading: first, when, sections, footer }: Page): string {
  const page = (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={policy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light" />
        <title>{title}</title>
        <style dangerouslySetInnerHTML={{ __html: style }} />
      </head>
      <body>
        <header>
          <p class="kind">{sort}</p>
          <h1>{first}</h1>
          <p class="when">{when}</p>
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
        <footer>{footer}</footer>
      </body>
    </html>
  );
  return `<!doctype html>\n${renderToString(page)}\n`;
}
