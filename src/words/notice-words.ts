import type { Machine } from '../model/machine.ts';
import type { OutItem } from '../model/session-facts.ts';
import { visible } from '../model/visible.ts';
import { clip, listed } from './figures.ts';
import { named } from './place.ts';

const outItem = ({ subject, at, linked }: OutItem, machine: Machine): string =>
  linked === undefined
    ? `the plug of ${named(subject, machine)} at the ${at}`
    : `a link that is in, ${linked.map(visible).join(' to ')} of ${named(subject, machine)} at the ${at}`;

/** A line of a stream that says nothing so far, and how to have the stream learned. */
export interface NotUnderstood {
  readonly line: string;
  /** A stream description is in use, and did not help. */
  readonly isDescribed: boolean;
  /** The very command for this port and machine. */
  readonly learn: string | undefined;
}

/** What a session says that is neither ask nor finding. Ports, folders and bytes come from outside and are shown with escapes. */
export const noticeWords = {
  'awaiting-stream': (port: string) =>
    `Listening on ${visible(port)}. Waiting for a declaration and a first status report.`,
  'nothing-heard': (port: string) =>
    `Nothing readable was heard on ${visible(port)}. Is the controller on, the port the right one, the baud rate right? Still listening.`,
  'nothing-understood': (port: string, { line, isDescribed, learn }: NotUnderstood) =>
    [
      `Lines come on ${visible(port)}, but no status report that can be read. As heard: "${clip(visible(line), 60)}".`,
      isDescribed
        ? 'The stream description fits no report: it is of another stream, or the controller reports otherwise now. To have it written anew, stop here and run'
        : 'Native sentences need a declaration first. Any other stream needs its description: to have it written, stop here and run',
      `\`${visible(learn ?? 'tellwire learn')}\`, then begin again with --stream and the file it wrote. Still listening.`,
    ].join(' '),
  'stream-lost': (port: string) =>
    `The stream on ${visible(port)} broke off. Plug it in again; the work goes on by itself. What was asked meanwhile is asked again.`,
  'stream-back': (port: string) => `The stream on ${visible(port)} is back.`,
  'something-out': (out: readonly OutItem[], machine: Machine) =>
    out.length === 0
      ? 'Nothing is unplugged or linked any more.'
      : `Still out: ${listed(out.map((each) => outItem(each, machine)))}. Nothing of it can be proved until that is put right.`,
  written: (bytes: string) => `Written to the port: ${visible(bytes)}`,
} as const;
