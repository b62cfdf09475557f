import type { Random } from '../random.ts';
import type { ToldPart } from './parts.ts';
import type { Shape } from './shape.ts';

/** Lays the parts of a report out in lines. Which signs stand between is drawn once. */
export function layoutDrawn(
  { layout }: Shape,
  random: Random,
): (parts: readonly ToldPart[]) => readonly string[] {
  const one = <Item>(items: readonly Item[]): Item => items[Math.floor(random.next() * items.length)] as Item;
  const joins = one(['=', ':', ': ']);
  const parts = one([';', ' ', '; ', ' | ']);
  const list = one([',', '/']);
  const column = one([',', ' ', '\t', ';']);
  const [open, close] = one([
    ['(', ')'],
    ['[', ']'],
    ['{', '}'],
  ]);
  const root = one(['ruk', 'selb', 'ompa']);
  switch (layout) {
    case 'pairs':
      return (told) => [told.flatMap((part) => pairsOf(part, joins, list)).join(parts)];
    case 'brackets':
      return (told) => [
        told.map((part) => `${part.name}${open}${pairsOf(part, '=', ' ', true).join(' ')}${close}`).join(' '),
      ];
    case 'json':
      return (told) => [JSON.stringify(objectOf(told))];
    case 'nested-json':
      return (told) => [JSON.stringify({ [root]: objectOf(told) })];
    case 'columns':
      return (told) => [told.flatMap(({ values }) => values).join(column)];
    case 'lines':
      return (told) => told.map(({ name, values }) => [name, ...values].join(' '));
    case 'line-each':
      return (told) =>
        told.flatMap(({ name, names, values }) =>
          names ? names.map((own, i) => `${name} ${own} ${values[i]}`) : [[name, ...values].join(' ')],
        );
  }
}

function pairsOf(
  { name, names, values, isSet }: ToldPart,
  joins: string,
  list: string,
  inside = false,
): readonly string[] {
  if (names) return names.map((own, i) => `${own}${joins}${values[i]}`);
  const all = values.join(isSet ? '+' : list);
  return [inside ? all : `${name}${joins}${all}`];
}

function objectOf(told: readonly ToldPart[]): object {
  return Object.fromEntries(
    told.map(({ name, names, values, isSet }) => [
      name,
      names
        ? Object.fromEntries(names.map((own, i) => [own, asJson(values[i] ?? '')]))
        : values.length === 1 && !isSet
          ? asJson(values[0] ?? '')
          : values.map(asJson),
    ]),
  );
}

const asJson = (value: string): string | number =>
  /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/.test(value) ? Number(value) : value;
