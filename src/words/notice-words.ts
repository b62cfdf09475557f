import type { Machine } from '../model/machine.ts';
import type { OutItem } from '../model/session-facts.ts';
import { visible } from '../model/visible.ts';
import { listed } from './figures.ts';
import { named } from './place.ts';

/** What a session says that is neither ask nor finding. Ports, folders and bytes come from outside and are shown with escapes. */
export const noticeWords = {
  'awaiting-stream': (port: string) =>
    `Listening on ${visible(port)}. Waiting for a declaration and a first status report.`,
  'nothing-heard': (port: string) =>
    `Nothing readable was heard on ${visible(port)}. Is the controller on, the port the right one, the baud rate right? Still listening.`,
  'stream-lost': (port: string) =>
    `The stream on ${visible(port)} broke off. Plug it in again; the work goes on by itself. What was asked meanwhile is asked again.`,
  'stream-back': (port: string) => `The stream on ${visible(port)} is back.`,
  'something-out': (out: readonly OutItem[], machine: Machine) =>
    out.length === 0
      ? 'Nothing is unplugged any more.'
      : `Still out: ${listed(out.map((each) => `the plug of ${named(each.subject, machine)} at the ${each.at}`))}. Nothing of it can be proved until it is back.`,
  written: (bytes: string) => `Written to the port: ${visible(bytes)}`,
} as const;
