/** The fields that are known: what was undefined is absent, which is how every record and every fact here says that it is not known. */
export type KnownOnly<T> = { [Key in keyof T as undefined extends T[Key] ? never : Key]: T[Key] } & {
  [Key in keyof T as undefined extends T[Key] ? Key : never]?: Exclude<T[Key], undefined>;
};

export const knownOnly = <const T extends object>(fields: T): KnownOnly<T> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as KnownOnly<T>;
