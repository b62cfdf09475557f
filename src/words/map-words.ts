import { visible } from '../model/visible.ts';
import { listed, momentText } from './figures.ts';

/** Which session the input map shows, and how far it reaches. Folders and names come from outside and are shown with escapes. */
export const mapWords = {
  from: (kind: 'commissioning' | 'search', started: string, folder: string) =>
    `Found in the ${kind === 'commissioning' ? 'commissioning' : 'search for a cause'} of ${momentText(started)} in ${visible(folder)}.`,
  otherFile:
    'It began with another version of the machine file: what was changed in the file since has not been tested.',
  otherMachine: (name: string) => `It is of another machine, ${visible(name)}.`,
  nobodyTested: (subjects: readonly string[], all: number) =>
    subjects.length === all ? 'Nobody tested a switch in it.' : `Not tested in it: ${listed(subjects)}.`,
  otherMachinesToo: (names: readonly string[]) =>
    `There are sessions of ${listed(names.map(visible))} too: name a machine file with --machine, or a session.`,
  none: (folder: string) => `No session of this machine is under ${visible(folder)}: nothing was tested yet.`,
} as const;
