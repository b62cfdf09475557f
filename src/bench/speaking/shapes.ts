import type { Random } from '../random.ts';
import { inputForms, layouts, type Shape } from './shape.ts';

const usual: Shape = {
  layout: 'pairs',
  inputs: 'figures',
  positions: 'mm',
  twice: false,
  activity: 'word',
  extras: 1,
  chatter: 0.05,
  reversed: false,
};

/** Invented streams of different shapes, for `--speak` and for tests. */
export const namedShapes: Readonly<Record<string, Shape>> = {
  'pairs-figures': usual,
  'pairs-decimal-mask': { ...usual, inputs: 'decimal', extras: 2 },
  'pairs-hex-mask': { ...usual, inputs: 'hex', activity: 'number' },
  'pairs-word-set': { ...usual, inputs: 'set' },
  'pairs-word-each': { ...usual, inputs: 'word-each', positions: 'unit' },
  'brackets-binary': { ...usual, layout: 'brackets', inputs: 'binary', extras: 3 },
  'brackets-signs': { ...usual, layout: 'brackets', inputs: 'signs', positions: 'counts' },
  'json-flat': { ...usual, layout: 'json', inputs: 'figures' },
  'json-nested': { ...usual, layout: 'nested-json', inputs: 'word-each', extras: 2 },
  'json-word-set': { ...usual, layout: 'json', inputs: 'set', activity: 'number' },
  'columns-figures': { ...usual, layout: 'columns', inputs: 'figures', activity: 'number' },
  'columns-capitals': { ...usual, layout: 'columns', inputs: 'capitals', positions: 'inch' },
  'lines-capitals': { ...usual, layout: 'lines', inputs: 'capitals' },
  'lines-hex-mask': { ...usual, layout: 'lines', inputs: 'hex', positions: 'unit' },
  'line-each-word': { ...usual, layout: 'line-each', inputs: 'word-each' },
  'line-each-figure': { ...usual, layout: 'line-each', inputs: 'figure-each', extras: 2 },
  'two-coordinates': { ...usual, inputs: 'binary', twice: true },
  'busy-chatter': { ...usual, inputs: 'word-each', chatter: 2, extras: 4 },
  'when-asked': { ...usual, inputs: 'hex', request: 'tell\n' },
};

/** A shape out of all there are, by chance. */
export function shapeDrawn(random: Random): Shape {
  const one = <Item>(items: readonly Item[]): Item => items[Math.floor(random.next() * items.length)] as Item;
  const layout = one(layouts);
  // Where nothing has a name, something that comes and goes would move all else; one line each needs names.
  const form = one(
    inputForms.filter((each) =>
      layout === 'line-each'
        ? each.endsWith('-each')
        : layout === 'lines' || layout === 'columns'
          ? each !== 'set' && each !== 'word-each'
          : true,
    ),
  );
  return {
    layout,
    inputs: form,
    positions: one(['mm', 'unit', 'inch', 'counts', 'none'] as const),
    twice: random.happens(0.2),
    activity: one(['word', 'number', 'none'] as const),
    extras: Math.floor(random.within(0, 5)),
    chatter: one([0, 0.05, 0.3, 2]),
    reversed: random.happens(0.15),
  };
}
