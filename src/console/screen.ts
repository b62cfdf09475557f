import blessed from 'blessed';
import type { Machine } from '../model/machine.ts';
import type { Face, FaceEvent, Reply } from '../session/operator.ts';
import type { Glyphs } from './painting/glyphs.ts';
import type { Canvas, Row, Tone } from './painting/row.ts';
import { screenRows } from './painting/screen-model.ts';
import { ScreenState } from './painting/screen-state.ts';
import { ScreenKeys } from './screen-keys.ts';

/** A part of the screen that belongs to something else than the ask, with keys of its own. */
export interface SidePanel {
  rows(canvas: Canvas): readonly Row[];
  /** Whether it took the key. */
  key(name: string): boolean;
}

export interface ScreenParts {
  readonly machine: Machine;
  readonly glyphs: Glyphs;
  readonly color: boolean;
  readonly panel?: SidePanel;
}

/** Ten pictures a second are enough for a person and little for a slow line. ms. */
const paintEvery = 100;
/** In a lower window the instruction has the room to itself. */
const leastForPanel = 16;

interface Terminal {
  readonly screen: blessed.Widgets.Screen;
  readonly page: blessed.Widgets.BoxElement;
  readonly timer: NodeJS.Timeout;
}

/** The full-screen view: shows the rows of the model and turns keys into answers. The only file that knows the terminal library. */
export class ScreenFace implements Face {
  private readonly parts: ScreenParts;
  private readonly state: ScreenState;
  private terminal: Terminal | undefined;
  private take: (reply: Reply) => void = () => {};
  private isGone = false;
  private readonly keys: ScreenKeys;

  constructor(parts: ScreenParts) {
    this.parts = parts;
    this.state = new ScreenState(parts.machine);
    const others = (name: string) => parts.panel?.key(name) ?? false;
    this.keys = new ScreenKeys(this.state, (reply) => this.take(reply), others);
  }

  start(take: (reply: Reply) => void): void {
    this.take = take;
    const { screen, box: page } = openTerminal();
    screen.on('keypress', (typed: string | undefined, key) => this.key(typed, key));
    screen.on('resize', () => this.paint());
    for (const stream of [process.stdin, process.stdout]) stream.on('error', () => this.gone());
    for (const end of ['end', 'close']) process.stdin.on(end, () => this.gone());
    this.terminal = { screen, page, timer: setInterval(() => this.paint(), paintEvery) };
    this.paint();
  }

  show(event: FaceEvent): void {
    const rings = this.state.take(event, performance.now());
    if (rings && !this.isGone) this.terminal?.screen.program.bel();
  }

  close(): void {
    if (!this.terminal) return;
    const { screen, timer } = this.terminal;
    this.terminal = undefined;
    this.take = () => {};
    clearInterval(timer);
    try {
      screen.destroy();
    } catch {
      // A terminal that has gone cannot be put back in order.
    }
    process.stdin.pause();
    process.stdin.unref();
  }

  private gone(): void {
    if (this.isGone) return;
    this.isGone = true;
    this.take({ kind: 'gone' });
  }

  private key(typed: string | undefined, key: blessed.Widgets.Events.IKeyEventArg): void {
    if (key.ctrl && key.name === 'c') this.take({ kind: 'gone' });
    else if (this.keys.press(typed, key.name, performance.now())) this.paint();
  }

  private paint(): void {
    if (this.isGone || !this.terminal) return;
    const { screen, page } = this.terminal;
    const { glyphs, panel } = this.parts;
    const whole = {
      width: Number(screen.width),
      height: Number(screen.height),
      glyphs,
      now: performance.now(),
    };
    const below = whole.height < leastForPanel ? [] : (panel?.rows(whole) ?? []);
    const rows = screenRows(this.state, { ...whole, height: whole.height - below.length });
    page.setContent([...rows, ...below].map((row) => tagged(row, this.parts.color)).join('\n'));
    screen.render();
  }
}

function tagged(row: Row, color: boolean): string {
  const tags = color ? inColour : inShapes;
  return row
    .map(
      ({ text, tone }) =>
        tags[tone].map((tag) => `{${tag}}`).join('') + blessed.escape(text) + closing(tags[tone]),
    )
    .join('');
}

/** A page that only shows: its rows are asked for again and again, its keys are told, `gone` where the terminal left or Ctrl-C came. */
export function showPage(page: {
  readonly glyphs: Glyphs;
  readonly color: boolean;
  readonly rows: (canvas: Canvas) => readonly Row[];
  readonly key: (typed: string) => void;
  readonly gone: () => void;
}): () => void {
  const { screen, box } = openTerminal();
  const paint = () => {
    const { glyphs } = page;
    const size = { width: Number(screen.width), height: Number(screen.height) };
    const rows = page.rows({ ...size, glyphs, now: performance.now() });
    box.setContent(rows.map((row) => tagged(row, page.color)).join('\n'));
    screen.render();
  };
  screen.on('keypress', (typed: string | undefined, key) => {
    if (key.ctrl && key.name === 'c') page.gone();
    else if (typed !== undefined) page.key(typed);
  });
  for (const stream of [process.stdin, process.stdout]) stream.on('error', page.gone);
  for (const end of ['end', 'close']) process.stdin.on(end, page.gone);
  const timer = setInterval(paint, paintEvery);
  return () => {
    clearInterval(timer);
    screen.destroy();
    process.stdin.pause();
    process.stdin.unref();
  };
}

function openTerminal() {
  // Without this the library draws lines with an alternate character set that UTF-8 terminals show as letters.
  process.env['NCURSES_NO_UTF8_ACS'] = '1';
  const screen = blessed.screen({ smartCSR: true, fullUnicode: true, title: 'tellwire', warnings: false });
  const box = blessed.box({ parent: screen, width: '100%', height: '100%', tags: true, wrap: false });
  return { screen, box };
}

const closing = (tags: readonly string[]): string =>
  tags
    .toReversed()
    .map((tag) => `{/${tag}}`)
    .join('');

type Tags = Readonly<Record<Tone, readonly string[]>>;

const inShapes: Tags = {
  plain: [],
  strong: ['bold'],
  faint: [],
  caution: ['bold'],
  danger: ['bold'],
  marked: ['inverse'],
};

/** Yellow for what calls for care, red for danger, as IEC 60073 has them; the words, marks and shapes beside them say the same. */
const inColour: Tags = { ...inShapes, caution: ['bold', 'yellow-fg'], danger: ['bold', 'red-fg'] };
