import { type Fault, onController, onInput } from './fault.ts';

/** What can be wrong with the controller, its settings, and what hangs on it. */
export const controllerFaults = {
  'polarity-reversed': onInput('the setting of this input is upside down', (_, { stage }) => {
    stage.setting = stage.setting === 'active when open' ? 'active when closed' : 'active when open';
  }),
  'not-enabled': onInput(
    'the input is not enabled: its level moves, its function never does',
    (_, { stage }) => {
      stage.enabled = false;
    },
  ),
  'dead-input': onInput('the pin is dead and stays as it was', (_, { stage }) => {
    stage.dead = true;
  }),
  'not-reported': onInput('the input is missing from the stream', (world, { stage }) => {
    stage.reported = false;
    world.controller.declare();
  }),
  'reports-on-release': onInput(
    'a press is reported only when it is over, for a moment; what lasts is reported after 1.2 s',
    (_, { stage }) => {
      stage.tellsOnRelease = true;
    },
  ),
  'halts-at-limit': onController(
    'any limit input that becomes active halts the controller until it is cleared',
    ({ quirks }) => {
      quirks.haltsAtLimit = true;
    },
  ),
  'restarts-mid-row': onInput(
    'the next time this input’s plug is pulled, the controller’s supply dips and it restarts',
    ({ quirks }, { line }) => {
      quirks.restartsOnUnplug.add(line.truth.name);
    },
  ),
  'status-block-off': onController(
    'the contact block that tells of the stop button fell off its head: power goes, the report does not',
    (world) => {
      for (const contact of world.contacts.filter(({ truth }) => truth.stop)) {
        contact.blades = 'welded';
        contact.rebuild();
      }
    },
  ),
  'power-stays-on': onController(
    'the stop button is wired to its input only: the drives keep their power',
    ({ quirks }) => {
      quirks.powerStaysOn = true;
    },
  ),
  'restarts-on-unlatch': onController(
    'letting the stop button out starts the machine again',
    ({ quirks }) => {
      quirks.restartsOnUnlatch = true;
    },
  ),
} satisfies Record<string, Fault>;
