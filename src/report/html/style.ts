/**
 * Black on white, one sans-serif, thin rules. Red stands for a fault and amber for a limitation (meanings as in IEC 60073), always
 * beside a shape and a word; nothing is green, because nothing here is a permission.
 */
export const style = `
@page { size: A4; margin: 14mm 13mm 16mm; @bottom-left { content: "Commissioning record. Not a safety validation."; font: 7.5pt system-ui, sans-serif; color: #444; } @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 7.5pt system-ui, sans-serif; color: #444; } }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; max-width: 62rem; padding: 2rem 1.5rem 4rem; background: #fff; color: #111; font: 0.95rem/1.5 system-ui, -apple-system, "Segoe UI", Roboto, "Helvetica Neue", "Liberation Sans", Arial, sans-serif; overflow-wrap: break-word; }
h1 { margin: 0; font-size: 1.9rem; line-height: 1.2; font-weight: 650; }
h2 { margin: 2.6rem 0 0.7rem; padding-bottom: 0.25rem; border-bottom: 2px solid #111; font-size: 1.25rem; font-weight: 650; line-height: 1.25; }
h3 { margin: 1.6rem 0 0.5rem; font-size: 1.02rem; font-weight: 650; }
p { margin: 0.4rem 0; max-width: 46rem; }
.strong { font-weight: 700; }
header .when { margin: 0.3rem 0 0; color: #444; }
.kind { margin: 0 0 0.1rem; font-size: 0.85rem; letter-spacing: 0.06em; text-transform: uppercase; color: #555; }
nav { display: flex; flex-wrap: wrap; gap: 0.2rem 1.1rem; margin: 1rem 0 0; padding: 0.6rem 0; border-top: 1px solid #ccc; border-bottom: 1px solid #ccc; font-size: 0.85rem; }
nav a { color: #1b4f8a; text-decoration: none; }
nav a:hover, nav a:focus { text-decoration: underline; }
ul, ol { margin: 0.4rem 0; padding-left: 1.3rem; max-width: 46rem; }
li { margin: 0.2rem 0; }
pre { margin: 0.6rem 0; padding: 0.5rem 0.8rem; max-width: 54rem; border: 1px solid #ccc; background: #f4f4f4; font: 0.86rem/1.6 ui-monospace, "Liberation Mono", monospace; white-space: pre-wrap; }
table { width: 100%; margin: 0.7rem 0; border-collapse: collapse; font-size: 0.86rem; line-height: 1.38; }
th { padding: 0.35rem 0.55rem; border-bottom: 1.5px solid #111; text-align: left; vertical-align: bottom; font-weight: 650; }
.groups th { border-bottom: 1px solid #999; color: #444; font-weight: 500; }
td { padding: 0.38rem 0.55rem; border-bottom: 1px solid #ccc; vertical-align: top; }
th:first-child, td:first-child { padding-left: 0; }
td:first-child div + div { color: #444; }
td div + div { margin-top: 0.12rem; }
dl { margin: 0.6rem 0; }
dl div { display: grid; grid-template-columns: 15rem 1fr; gap: 0 1rem; padding: 0.28rem 0; border-bottom: 1px solid #ddd; }
dt { color: #444; }
dd { margin: 0; min-width: 0; }
dd.blank { min-height: 1.5rem; border-bottom: 1px dotted #111; }
dl div:has(.blank) { border-bottom: 0; }
.mark { white-space: nowrap; }
.mark svg { width: 0.72em; height: 0.72em; margin-right: 0.42em; vertical-align: -0.03em; }
.mark.failed { color: #9b0000; font-weight: 700; }
.mark.limited { color: #6b4300; font-weight: 600; }
.mark.inconclusive { font-weight: 600; }
.mark.not-tested, .mark.quiet { color: #555; }
.headline { margin: 1rem 0; padding: 0.8rem 1.1rem 0.85rem; border: 2px solid #111; border-left-width: 0.8rem; }
.headline .mark { font-size: 1.5rem; font-weight: 700; }
.headline.failed { border-color: #9b0000; }
.headline.limited { border-color: #b87800; }
.headline.inconclusive, .headline.not-tested { border-left-style: double; }
.headline p { margin: 0.15rem 0 0; }
.callout { margin: 0.5rem 0; padding: 0.45rem 0.8rem; border-left: 4px solid #777; background: #f4f4f4; max-width: 54rem; font-size: 0.9rem; }
.callout.failed { border-left-color: #9b0000; }
.callout.limited { border-left: 6px double #b87800; }
.drawings { display: grid; grid-template-columns: repeat(3, 1fr); gap: 0.9rem 1.4rem; margin: 0.8rem 0; }
figure { margin: 0; }
figcaption { margin-bottom: 0.15rem; font-size: 0.8rem; color: #333; }
figure svg { display: block; width: 100%; height: auto; }
.schematics { display: grid; grid-template-columns: repeat(2, 1fr); gap: 1.3rem 2rem; margin: 1rem 0 1.4rem; }
.pictures { margin: 0.8rem 0 1rem; max-width: 46rem; }
.pictures figure + figure { margin-top: 0.9rem; }
.space { height: 10rem; margin: 0.8rem 0; border: 1px solid #777; }
.own-page { margin-top: 2.6rem; padding: 0 1.2rem 1rem; border: 3px solid #111; font-weight: 700; }
.own-page td:last-child { font-weight: 400; }
.own-page h2 { margin-top: 1.1rem; letter-spacing: 0.03em; }
#annex { font-size: 0.9em; }
footer { margin-top: 3rem; padding-top: 0.6rem; border-top: 1px solid #ccc; font-size: 0.8rem; color: #555; }
@media (max-width: 48rem) { .drawings, .schematics { grid-template-columns: 1fr; } dl div { grid-template-columns: 1fr; } main { overflow-x: auto; } }
@media print {
  body { max-width: none; padding: 0; font-size: 9pt; line-height: 1.42; }
  h1 { font-size: 17pt; } h2 { margin-top: 6mm; font-size: 12pt; } h3 { font-size: 10pt; margin-top: 4mm; }
  nav, footer { display: none; } .space { height: 38mm; }
  table { font-size: 8pt; } .callout { font-size: 8.5pt; } figcaption { font-size: 7.5pt; }
  h2, h3, h2 + p, thead, figcaption { break-after: avoid; }
  tr, figure, .callout, #verdicts .keep, #findings .keep, #motion .keep, #repeat .keep, #envelope .keep, .headline, dl div, li { break-inside: avoid; }
  .drawings, .schematics { gap: 3mm 6mm; }
  .pictures { max-width: 130mm; margin: 2mm 0 3mm; } #sketch .pictures { max-width: 105mm; }
  .own-page { padding: 0 5mm 3mm; break-before: page; break-after: page; margin-top: 0; }
  #annex { break-before: page; }
  .mark, .callout, .headline { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`;
