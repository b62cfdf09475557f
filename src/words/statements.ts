import type { Facts, PressFacts, Resolution } from '../model/verdict.ts';
import { counted, percentText, rateText, roundedUp, timeText } from './figures.ts';

/**
 * What n of n presses prove, and no more: the one-sided exact binomial bound 1 − 0.05^(1/n) on the share that could still go
 * unseen (the rule of three in its exact form; Eypasch et al., BMJ 311 (1995) 619).
 */
export function pressStatement({ asked, answered, elsewhere = 0, missShareAtMost95 }: PressFacts): string {
  const count = `${answered} of ${asked} answered${elsewhere === 0 ? '' : `, ${elsewhere} by another input`}`;
  if (answered + elsewhere < asked)
    return `${count}: each missed press is a fault of its own, not a percentage.`;
  if (missShareAtMost95 === undefined) return `${count}.`;
  return `${count}: with 95 % confidence no more than about ${percentText(missShareAtMost95)} of presses go unseen; it shows the wiring, not reliability.`;
}

/** How finely the stream saw, and what it could have missed. */
export function resolutionStatement(seen: Resolution): string {
  const damage = [
    seen.lost === 0 ? '' : `${counted(seen.lost, 'report')} lost`,
    seen.unreadable === 0 ? '' : `${counted(seen.unreadable, 'line')} unreadable`,
  ].filter((part) => part !== '');
  const lost = damage.length === 0 ? '' : ` ${damage.join(', ')}.`;
  const hole = seen.surePulse === seen.longest ? '' : `, longest hole ${timeText(roundedUp(seen.longest))}`;
  return `${counted(seen.reports, 'report')}, one every ${timeText(seen.median)}${hole}: a pulse shorter than ${timeText(roundedUp(seen.surePulse))} could pass unseen.${lost}`;
}

export function restStatement({ level, active, quietFor, edges }: NonNullable<Facts['rest']>): string {
  const value = [
    active === '?' ? 'active value not reported' : active === '1' ? 'ACTIVE' : 'inactive',
    level === '?' ? 'level not reported' : `level ${level === 'H' ? 'high' : 'low'}`,
  ].join(', ');
  return edges === 0
    ? `Steady for ${timeText(quietFor)}: ${value}. This proves nothing more: a cut wire is steady too.`
    : `${counted(edges, 'change')} in ${timeText(quietFor)} with hands off; last ${value}.`;
}

/** What a time without a trip proves: the one-sided Poisson bound, −ln 0.05 of none counted (Eypasch et al., BMJ 311 (1995) 619). */
export function soakStatement({ trips, watched, perHourAtMost95 }: NonNullable<Facts['soak']>): string {
  const count = `${counted(trips, 'trip')} in ${timeText(watched)}`;
  if (perHourAtMost95 === undefined) return `${count}.`;
  const bound = `with 95 % confidence fewer than ${rateText(perHourAtMost95)} an hour`;
  return `${count}: ${bound}, as long as nothing changes and trips come by chance.`;
}

/** The row of three reported states, told in words. */
export function rowStatement({ bits, by }: NonNullable<Facts['row']>): string {
  const word = (bit: string | undefined) => {
    if (bit !== '0' && bit !== '1') return 'unknown';
    if (by === 'change') return bit === '0' ? 'as at rest' : 'changed';
    return bit === '1' ? 'ACTIVE' : 'inactive';
  };
  const told = `rest ${word(bits[0])}, pressed ${word(bits[1])}, unplugged ${word(bits[2])}`;
  return by === 'change' ? `${told} (levels only: the active-level setting was not tested)` : told;
}

/** What showed that drive power went, as the person said it. */
export const powerWords = {
  'knob-free': 'a shaft or hand wheel turned freely by hand',
  lamp: 'a drive or contactor lamp went out',
  meter: 'a meter showed no voltage',
} satisfies Record<NonNullable<Facts['powerShownBy']>, string>;
