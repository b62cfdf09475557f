import { counted, rateText } from '../figures.ts';
import { type FindingEntry, noChange } from './entry.ts';

export const falseTrips: FindingEntry<'false-trips'> = {
  title: 'It trips without cause',
  said: ({ input, trips, low, high }) =>
    `${input} tripped ${counted(trips, 'time')} while nobody touched it${
      low === undefined || high === undefined
        ? ''
        : `: with 95 % confidence between ${rateText(low)} and ${rateText(high)} an hour, if they come by chance`
    }.`,
  means:
    'Nobody touched it and it left its rest. Such an input stops the machine in the middle of a cut. Noise from a drive, a spindle or a welder nearby, a loose joint, a worn contact that vibration opens, or a weak pull resistor are the usual reasons. Trips that come together with something are not chance: what they come with is the cause.',
  next: [
    'Look at the times of the trips: did something else switch, start or move then?',
    'Power off; reseat the plug and tug each crimp and screw.',
    'Move the signal cable away from motor and spindle cables; see that its shield is connected at one end.',
    'Watch again for as long: without a change nothing was shown to be cured.',
  ],
  change: noChange,
};
