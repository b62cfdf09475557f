/** The number a person typed, with a point or a comma for the fraction and perhaps its unit behind it; undefined where it is none. */
export function typedNumber(line: string): number | undefined {
  const found = /^([+-]?\d{1,9}(?:[.,]\d{1,9})?)\s*(?:[a-zµΩ°]{1,8})?$/i.exec(line.trim());
  return found?.[1] === undefined ? undefined : Number(found[1].replace(',', '.'));
}
