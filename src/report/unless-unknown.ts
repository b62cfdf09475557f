/** What a file left open is absent from a record. */
export const unlessUnknown = <T extends string>(value: T): Exclude<T, 'unknown'> | undefined =>
  value === 'unknown' ? undefined : (value as Exclude<T, 'unknown'>);
