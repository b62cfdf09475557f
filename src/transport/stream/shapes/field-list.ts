import { type Field, numberIn } from '../../../model/stream-description.ts';

const mostFields = 256;
/** Longer values are kept by their beginning: no switch needs more. */
const longestText = 96;
const runTogether = /^(?:[a-z]{1,8}[-+]?\d{1,9}(?:\.\d{1,9})?){1,9}$/i;

/** Collects the fields of one line within bounds, and the further names that one and the same value goes by. */
export class FieldList {
  private readonly fields: Field[] = [];
  private readonly sets = new Map<
    string,
    { readonly place: number; readonly words: string[]; numbers: boolean }
  >();
  private places = 0;

  get isFull(): boolean {
    return this.fields.length >= mostFields;
  }

  /** How many values the line holds. */
  get count(): number {
    return this.places;
  }

  value(path: string, text: string): void {
    if (this.isFull) return;
    const place = this.places++;
    const short = text.slice(0, longestText);
    this.fields.push({ path, text: short, place });
    for (const [letters, figures] of lettered(short))
      this.fields.push({ path: `${path}.${letters}`, text: figures, place });
  }

  /** A key, or a bracket with a name, stands for a set of words, also where it holds none. */
  set(path: string): void {
    if (this.sets.size < mostFields && !this.sets.has(path))
      this.sets.set(path, { place: this.places, words: [], numbers: false });
  }

  addToSet(path: string, word: string): void {
    const set = this.sets.get(path);
    if (numberIn(word) === undefined) set?.words.push(word);
    else if (set) set.numbers = true;
  }

  /** All fields. Bare columns go by a second name, counted among their like: a column that is missing at times then moves no other. */
  all(): readonly Field[] {
    const ofWords = [...this.sets].filter(([, { words, numbers }]) => words.length > 0 || !numbers);
    const sets = ofWords.map(([path, { place, words }]) => ({
      path: `${path}.*`,
      text: words.join(' ').slice(0, longestText * 2),
      place,
    }));
    return [...this.fields, ...this.byKind(), ...sets];
  }

  private byKind(): readonly Field[] {
    const columns = this.fields.filter(({ path }) => /^\d+$/.test(path));
    const kinds = columns.map(({ text }) => (numberIn(text) === undefined ? 'word' : 'number'));
    if (new Set(kinds).size < 2) return [];
    const counts = { word: 0, number: 0 };
    return columns.map(({ text, place }, i) => {
      const kind = kinds[i] ?? 'word';
      return { path: `${kind}-${counts[kind]++}`, text, place };
    });
  }
}

/** "X12.5Y3": letters and the figures behind them. */
function lettered(text: string): readonly (readonly [string, string])[] {
  if (!runTogether.test(text)) return [];
  return [...text.matchAll(/([a-z]+)([-+]?\d+(?:\.\d+)?)/gi)].map(([, letters = '', figures = '']) => [
    letters,
    figures,
  ]);
}
