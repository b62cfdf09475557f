import { type Millis, type Mm, mm, ms, type Seconds, seconds } from '../model/units.ts';

/** Every number a judgement turns on, with its unit and where it comes from. */

/** How long all inputs must be back at rest before a press counts as over: longer than the worst contact bounce measured by J. Ganssle (157 ms, "A Guide to Debouncing"; from memory). */
export const pressOver: Millis = ms(250);

/** A press held "about a second" is still on when a hole in the stream of half a second ends. */
export const longestHoleForAbsence: Millis = ms(500);

/** An unplugged level counts only if it then holds this long ... */
export const holdsFor: Millis = ms(1000);
/** ... and over this many reports. */
export const holdsOver = 10;
/** A level that has not come to hold by then is called flickering. */
export const holdsAtLatest: Millis = ms(5000);
/** On a slow stream ten reports take longer than five seconds; beyond this the level is unknown. */
export const holdsAtVeryLatest: Millis = ms(15_000);

/** After "done" the stream is watched a little longer: a controller may report a press late. */
export const watchAfterDone: Millis = ms(1000);

/** Edges of one contact closer together than this are bounce, not fingers: taps last 40 to 80 ms, worn contacts bounce 5 to 20 ms (common practice, no source). */
export const fingersAtFastest: Millis = ms(30);
/** Bounce is only counted where reports come at least this often (100 Hz): else it falls between them. */
export const slowestForBounce: Millis = ms(10.5);

/** Changes with hands off from which an input is called flickering; a single one may be a hand that was not yet off. */
export const flickerAtRest = 2;
/** Changes within one settling time from which an open wire is called floating; fewer may be the plug being wiggled free. */
export const flickerWhenOut = 3;

/** A press held "about a second" is never shorter than the quickest deliberate one (150 to 500 ms, common practice, no source). */
export const pressAtShortest: Millis = ms(150);

/** How often an input may move while other switches are pressed before it is called flickering. */
export const straysAtMost = 1;

/** Time with hands off where presses or plugs are asked for without the rest check before them, s. */
export const quietFirst: Seconds = seconds(3);

/** A clean press is one change and one change back. */
export const cleanEdges = 2;
/** Presses without an answer that end the pressing of one switch. */
export const unansweredEnds = 2;
/** How often a row of steps broken off by the stream is begun anew. */
export const rowAttempts = 3;
/** How often the right plug is looked for. */
export const plugAttempts = 3;

/** From this voltage on no one is asked to pull a plug; house rule, well under the 60 V DC of PELV (IEC 60204-1). */
export const highestPlugVoltage = 30;

/** Time a person gets for an action, s (common practice, no source). */
export const timeToPress: Seconds = seconds(20);
export const timeToPlug: Seconds = seconds(120);
export const timeToAnswer: Seconds = seconds(60);

/** Time a person gets for a motion by her own control, s: the longest seek of a small machine at its lowest speed (common practice, no source). */
export const timeToMove: Seconds = seconds(180);
/** A first move goes no further than this, mm or degrees, and has ten times as much room on either side (house rule). */
export const firstMove = 5;

/** How many questions are put at most about one motion that was seen. */
export const mostLooks = 4;
/** Off its switch again before the next seek, mm or degrees: further than any switch in common use needs to let go. */
export const offTheSwitch = 10;

/** Homings watched to see how well an axis repeats, and where they begin: mm from home, in turn; all within the free way (house rule). */
export const cyclesUsual = 10;
export const startPoints = [5, 15, 35] as const;
/** The span within which a home place is called repeatable, mm: a router's half a tenth of its parts (common practice, no source). */
export const repeatTolerance: Mm = mm(0.1);
/** A calliper in practised hands reads so well, mm (common practice, no source: DIN 862 allows 0.03 mm for its own error). */
export const calliperError: Mm = mm(0.05);
/** An error of scale that is let pass, as a share: a millimetre in a metre (common practice, no source). */
export const scaleAccepted = 0.001;
/** The short and the long length that scale is measured at: mm, and at most this share of the travel. */
export const scaleLengths = { short: 20, long: 200, share: 0.6 } as const;
/** Homings of one axis that are watched: the first sets the zero, the second shows what was lost in between. */
export const homingsWatched = 2;

/** A machine that stands this long has ended its motion; between the legs of a homing it stands for less (judgement, no source). */
export const standsFor: Millis = ms(1500);
/** Where the activity is not reported, pauses between axes must be waited out (judgement, no source). */
export const standsForUntold: Millis = ms(4000);
/** A drop to this share of the speed is more than rounding and late reports make of it (judgement, no source). */
export const slowedTo = 0.9;

/** A stream that says nothing for this long has a gap in it, though the port stayed open (judgement, no source). */
export const silenceIsGap: Millis = ms(3000);

/** Changes closer than this belong to one false trip: a contact bounces (common practice, no source). */
export const oneTripWithin: Millis = ms(100);
/** While false trips are counted, a hole between two reports longer than this was not watched (common practice, no source). */
export const soakHole: Millis = ms(1000);

/** Moved before a length is measured, mm, so that what is loose is taken up: more than any screw or belt in use has (common practice, no source). */
export const takenUpFirst = 2;

/** A push and a letting go are two edges; a few more are bounce or a second thought (judgement, no source). */
export const edgesOfOnePush = 4;
