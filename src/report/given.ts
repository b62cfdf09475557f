type Given<T> = { [Key in keyof T]?: Exclude<T[Key], undefined> };

/** The fields that are known; in a record what is unknown is absent, never empty. */
export const given = <T extends object>(fields: T): Given<T> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Given<T>;

export const unlessUnknown = <T extends string>(value: T): Exclude<T, 'unknown'> | undefined =>
  value === 'unknown' ? undefined : (value as Exclude<T, 'unknown'>);
