import { escapeBytes, visible } from '../model/visible.ts';
import { caution } from './cautions.ts';

/** What is wrong with a line that a person typed for her controller. */
export type OwnLineFault =
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-long'; readonly length: number }
  | { readonly kind: 'not-printable'; readonly character: string; readonly place: number };

/** Said around a line of the operator's own, from the prompt to the port. `most`: characters. */
export const ownLineWords = {
  title: 'A line of your own to your controller',
  hint: 'Type line to send your controller a line of your own.',
  keys: 'Enter: go on. Esc: send nothing, back to what is asked.',
  key: 'a line of your own',
  prompt: (most: number) =>
    `Type the line, at most ${most} plain characters, then Enter: it is shown back first. An empty line sends nothing.`,
  cautions: [
    'Motion can start at once. Send nothing that you do not know by heart.',
    caution.listens,
    'It is you who commands: the tool adds nothing to your line but its end, and does not know what your controller makes of it.',
    'Beside tellwire inline nothing can be sent: there your own program commands.',
  ],
  shownBack: (bytes: string) => `These bytes would be written to the port: ${escapeBytes(bytes)}`,
  question: 'Type yes in full, then Enter, to write them. Anything else sends nothing.',
  dropped: 'Nothing was sent.',
  askOver: 'What was asked is over meanwhile. Nothing was sent.',
  portGone: 'The port is not open. Nothing was sent.',
  notNow: 'A line of your own can be sent only while you are asked to move the machine or to clear a halt.',
  wrong: (fault: OwnLineFault, most: number) =>
    `${faultWords(fault)} Allowed: one line of 1 to ${most} printable ASCII characters. Look it up and type it again, or use your own control.`,
} as const;

function faultWords(fault: OwnLineFault): string {
  switch (fault.kind) {
    case 'empty':
      return 'Found: an empty line.';
    case 'too-long':
      return `Found: ${fault.length} characters.`;
    case 'not-printable':
      return `Found: "${visible(fault.character)}" at place ${fault.place}.`;
  }
}

/** Who stands behind a line that was written to the port. */
export const whoseWords = { tool: "the tool's request", own: 'typed by the operator' } as const;
