import { type Millis, ms } from '../../model/units.ts';

/** Every number that motion is read with, with its unit and where it comes from. */

/** An axis stands only where this many reports agree ... */
export const stillReports = 3;
/** ... over this long ... */
export const stillFor: Millis = ms(100);
/** ... and for as long as the slowest approach anyone sets would need to leave the band: 6 mm/min, mm/s (common practice, no source: slow approaches run at 20 mm/min and more). */
export const slowestApproach = 0.1;

/** A change of direction counts from this many position steps on: one is the flicker of a rounded number. */
export const reversalSteps = 2;

/** No small machine moves faster, mm/s: 60 m/min (common practice, no source). A position that changed by more between two reports was set, not travelled. */
export const fastestEver = 1000;
/** Where the file tells the rapid speed, nothing moves faster than this many times it: an override of 200 % and a report sent late. */
export const overRapid = 3;
/** What rounding may add to a change of position, in steps. */
export const resetSteps = 2;
/** How much faster than the reports around it showed an axis may have gone where one of them was stamped late. */
export const lateReports = 2.5;

/** Speeds are read over spans at least this many position steps long, so that rounding costs an eighth at most. */
export const stepsForSpeed = 8;

/** The fiercest acceleration, mm/s²: twice the declared one, else half of gravity (common practice, no source: small machines run 50 to 3000). */
export const fiercest = (declared: number | undefined): number =>
  declared === undefined ? 5000 : declared * 2;

/** Without a report for longer than this, or than so many usual periods, an axis was out of sight (judgement, no source). */
export const silentFor: Millis = ms(1000);
export const silentPeriods = 5;
