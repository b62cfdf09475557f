import { counted, listed } from '../figures.ts';
import { named } from '../place.ts';
import { type FindingEntry, noChange } from './entry.ts';

export const answersElsewhere: FindingEntry<'answers-elsewhere'> = {
  title: 'Another input answers',
  said: ({ input, answeredBy }, { machine, subject }) =>
    `${named(subject, machine)} was pressed; not ${input} but ${answeredBy} changed.`,
  means:
    'The switch works, but its wire ends on another terminal than the file says. At rest a crossed pair looks perfect. On the first homing the machine looks for one switch and strikes another.',
  next: [
    'Move the wire at the controller to the terminal the file names; move the other one of a crossed pair too. Move wires, not labels.',
    'Or correct the machine file and the drawing, where the wiring is the one that is meant.',
    'Press every switch again.',
  ],
  change: ({ input, answeredBy }, scene) => [
    {
      what: 'wire',
      from: `wire of ${scene.subject} on ${terminal(answeredBy, scene.machine.inputs)}`,
      to: `on ${terminal(input, scene.machine.inputs)}`,
      why: 'the controller takes it for another switch.',
      retest: `press of every switch, open wire of ${scene.subject}`,
    },
  ],
};

const terminal = (
  name: string,
  inputs: readonly { readonly name: string; readonly terminal: string | undefined }[],
): string => {
  const found = inputs.find((each) => each.name === name)?.terminal;
  return found === undefined ? name : `${name} (terminal ${found})`;
};

export const anotherAnswered: FindingEntry<'another-answered'> = {
  title: 'A press was answered by another input',
  said: ({ input, answeredBy, elsewhere, answered, asked }, { machine, subject }) =>
    `${named(subject, machine)} was pressed ${counted(asked, 'time')}; ${input} answered ${answered}, ${listed(answeredBy)} answered ${elsewhere} in its place. See whether another switch was touched by mistake; where none was, press it again.`,
  means:
    'The switch was seen when it was pressed, but at one of the asks its input kept still while another changed. Most often another switch was touched, and nothing is wrong. It can also be a joint that joins two wires now and then. A stream cannot tell which, so the press is neither counted for the switch nor against it, and comes again. Where as many of its own presses were seen as were asked for, they count.',
  next: [
    'Was another switch touched by mistake? Press this one again, as often as it was asked for, with its name on it.',
    'If the other input answers again though the right switch is pressed, power off and look where the two wires meet: in the plug, at the terminals, in a shared cable.',
  ],
  change: noChange,
};

export const shiftedPlug: FindingEntry<'shifted-plug'> = {
  title: 'A connector sits shifted',
  said: ({ connector, by }) =>
    `Every switch on connector ${connector} answers ${counted(Math.abs(by), 'terminal')} further ${by < 0 ? 'back' : 'on'}.`,
  means:
    'One switch on a wrong terminal is a wire; all of them off by the same step is a plug. It was put on one or more pins to the side, or turned round. What should be supply may now stand on a signal pin.',
  next: [
    'Power off before you touch it. Look for the first pin on plug and socket and put it right; key it so that it fits one way only.',
    'Look for damage: a shifted plug can put supply on a signal pin.',
    'Press every switch of this connector again.',
  ],
  change: ({ connector, by }) => [
    {
      what: 'wire',
      from: `connector ${connector} shifted by ${counted(Math.abs(by), 'terminal')}`,
      to: 'seated on its first pin, keyed',
      why: 'all its switches answer on their neighbours’ inputs.',
      retest: `rest, press and open wire of every input on ${connector}`,
    },
  ],
};

export const movesTogether: FindingEntry<'moves-together'> = {
  title: 'Inputs move together',
  said: ({ input, with: others }) => `One press changed ${input} and ${listed(others)} at once.`,
  means:
    'One switch moves several inputs. Their signal wires touch somewhere, a common wire is broken, or one terminal feeds them all. Joined so, a switch that is held closed can hide the other one.',
  next: [
    'Power off; look for a strand, a solder bridge or a ferrule that touches its neighbour in the plugs.',
    'See that each switch has its own return to the common, and that the common is whole.',
    'If they are joined on purpose, declare them as one input with several switches.',
  ],
  change: noChange,
};

export const chainBlocked: FindingEntry<'chain-blocked'> = {
  title: 'A chain of switches is already open or held',
  said: ({ input, others }) =>
    `${input} serves several switches; while it reads operated, ${listed(others)} cannot be told apart from it.`,
  means:
    'Several switches share this input. As long as one of them, or its wire, keeps the input operated, pressing the others changes nothing, so they could not be judged.',
  next: [
    'Find the one that holds the chain: look at each switch, then unplug one after the other.',
    'Once the input is at rest again, press every switch of the chain.',
    'Where a controller has inputs to spare, give each switch its own.',
  ],
  change: noChange,
};

export const sideClash: FindingEntry<'side-clash'> = {
  title: 'End, side and direction do not agree in the file',
  said: ({ axis, side, end, positive }, { subject }) =>
    `The file puts ${subject} at the ${end} end of ${axis} and on the ${side}, but positive ${axis} points to the ${positive}.`,
  means:
    'By ISO 841 the positive direction is that of the tool over the work. A switch at the positive end stands on the side the positive direction points to, one at the negative end on the other. Where the file says otherwise, either the words are wrong or the machine is mirrored; nothing in a status stream can tell which.',
  next: [
    'Stand where the file says you stand, look at the machine, and correct end, side or direction in the file.',
    'Remember that a moving table runs opposite to the tool over the work.',
  ],
  change: noChange,
};

export const inputNotInStream: FindingEntry<'input-not-in-stream'> = {
  title: 'The stream does not report this input',
  said: ({ input }) => `The controller’s stream names no input ${input}.`,
  means:
    'The machine file declares an input which the controller does not report. Nothing about it can be tested by listening.',
  next: [
    'Compare the names in the machine file with those in the controller’s declaration; they must be spelled alike.',
    'Let the controller report it, where it can.',
  ],
  change: (finding) => [
    {
      what: 'setting',
      from: `${finding.input} not in the status stream`,
      to: 'reported, under the name the machine file uses',
      why: 'what is not reported cannot be tested.',
      retest: `rest, press and open wire of ${finding.input}`,
    },
  ],
};

export const conflictingAnswers: FindingEntry<'conflicting-answers'> = {
  title: 'The presses contradict each other',
  said: ({ inputs }) => `Presses of the same switch were answered by different inputs: ${listed(inputs)}.`,
  means:
    'The same instruction gave different results. Another switch may have been pressed, two people may have been at the machine, or a joint comes and goes. Nothing is concluded from answers that disagree.',
  next: [
    'Tag the switches with their names, and press them again, one person at the machine.',
    'If it happens again with the right switch, look for a loose joint or a broken common.',
  ],
  change: noChange,
};
