import { FieldList } from './field-list.ts';

const deepest = 16;

/** The fields of a line that is JSON; undefined where it is none, or nested deeper than any report. */
export function jsonFields(line: string): FieldList | undefined {
  const text = line.trim();
  if (!/^[[{]/.test(text) || nesting(text) > deepest) return undefined;
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  const list = new FieldList();
  walk(value, '', list);
  return list;
}

function walk(value: unknown, path: string, list: FieldList): void {
  if (value === null || typeof value !== 'object') {
    list.value(path, String(value));
    return;
  }
  const below = path === '' ? '' : `${path}.`;
  // Keys become parts of names, never properties: a key such as __proto__ is a name like any other.
  const entries = Object.entries(value);
  if (Array.isArray(value) && path !== '') list.set(path);
  for (const [key, inner] of entries) {
    if (list.isFull) return;
    walk(inner, `${below}${key.slice(0, 40)}`, list);
    if (Array.isArray(value) && typeof inner === 'string') list.addToSet(path, inner);
  }
}

/** How deep brackets stand in each other, strings aside. */
function nesting(text: string): number {
  let depth = 0;
  let most = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const character = text[i];
    if (quoted) {
      if (character === '\\') i++;
      else if (character === '"') quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === '{' || character === '[') most = Math.max(most, ++depth);
    else if (character === '}' || character === ']') depth--;
  }
  return most;
}
