import { visible } from '../model/visible.ts';

/** Data as it may stand in a record: every text with its control characters shown, every absent field left out. */
export function shown<T>(value: T): T {
  if (typeof value === 'string') return visible(value) as T;
  if (Array.isArray(value)) return value.map(shown) as T;
  if (value === null || typeof value !== 'object') return value;
  const fields = Object.entries(value).filter(([, each]) => each !== undefined);
  return Object.fromEntries(fields.map(([key, each]) => [key, shown(each)])) as T;
}
