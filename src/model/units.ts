/** Numbers that carry their unit in the type, so that milliseconds cannot be added to millimetres. */
declare const unit: unique symbol;
type Unit<Name extends string> = number & { readonly [unit]: Name };

/** Milliseconds; a moment on some clock or a length of time. */
export type Millis = Unit<'ms'>;
/** Whole or broken seconds, where a person is told a time. */
export type Seconds = Unit<'s'>;
/** Millimetres of commanded machine position or of travel. */
export type Mm = Unit<'mm'>;
export type Volts = Unit<'V'>;
/** A share between 0 and 1. */
export type Share = Unit<'1'>;

export const ms = (value: number): Millis => value as Millis;
export const seconds = (value: number): Seconds => value as Seconds;
export const mm = (value: number): Mm => value as Mm;
export const volts = (value: number): Volts => value as Volts;
export const share = (value: number): Share => value as Share;

export const inMillis = (time: Seconds): Millis => ms(time * 1000);
export const later = (moment: Millis, by: Millis): Millis => ms(moment + by);
export const between = (from: Millis, to: Millis): Millis => ms(to - from);
