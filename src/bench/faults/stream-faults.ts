import { type Fault, onController } from './fault.ts';

/** What can be wrong with the stream itself, or only scant. */
export const streamFaults = {
  'lost-reports': onController('one report in twenty never arrives', ({ controller }) => {
    controller.link.lost = 0.05;
  }),
  'noisy-line': onController('one sentence in thirty arrives with a wrong byte', ({ controller }) => {
    controller.link.damaged = 1 / 30;
  }),
  'slow-stream': onController('five reports a second instead of a hundred', ({ controller }) => {
    controller.telling.rate = 5;
  }),
  'levels-only': onController('the stream tells levels and not what counts as active', ({ controller }) => {
    controller.telling.active = false;
  }),
  'active-only': onController('the stream tells what counts as active and no levels', ({ controller }) => {
    controller.telling.levels = false;
  }),
} satisfies Record<string, Fault>;
