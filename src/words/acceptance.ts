/** What every session and every record says of itself. */
export const whatItIs = {
  listens:
    'tellwire only listens. It commands no motion, changes no setting and cannot stop the machine. It is no safety function, no emergency stop, no interlock and no guard.',
  method:
    'A person was asked to do one thing at a time; the controller’s status text was recorded meanwhile with its times; each result is judged from what was recorded, by fixed rules. The same recording gives the same result anywhere.',
  silence:
    'Nothing is proved by silence. A check that lacks its evidence is inconclusive and says what is missing. A pulse shorter than the time between two reports may have gone unseen.',
  positions:
    'Positions in a status text are commanded by the controller, not measured. Where the machine really is, only a person or an instrument can say.',
  colours:
    'Marks and words carry the meaning; colour only repeats it. No mark on any page is a permission to run the machine.',
} as const;

/** The acceptance wording: what a signature under the record stands for, and what it does not. */
export const acceptance: readonly string[] = [
  'Each switch listed as Proved was operated by hand as often as stated beside it; the controller reported each time, and no other input changed that was not named.',
  'A switch with a limitation works within it: where a broken wire goes unnoticed, the next broken wire will.',
  'What stands under Not tested is not covered by anything in this record.',
  'Observed were status inputs, on this day, in this condition. The record is not a safety validation, establishes no performance level under ISO 13849, does not replace verification under IEC 60204-1, and gives no assurance that the machine is safe to operate.',
  'Mains, drives, the emergency-stop circuit and guards are matters of local code and licensed practice.',
];

/** What brings the tests round again. Intervals are common practice, no source; the owner sets his own. */
export const retestTriggers: readonly string[] = [
  'after any change to wiring, plugs or the controller’s settings',
  'after a collision, and after work on a cable chain or a switch bracket',
  'after an input stopped the machine for no reason',
  'otherwise every 6 months; in daily production every 1 to 3 months; the stop every month',
];
