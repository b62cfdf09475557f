import type { SessionFacts } from '../../src/model/session-facts.ts';
import { ms } from '../../src/model/units.ts';
import { weekend } from './weekend.ts';
import { input } from './workshop.ts';

export const markup = '<img src=x onerror=1>';
export const escapeSequence = '\u001b[31mred\u001b]0;title\u0007';
export const turned = '\u202etxet\u202c';
const nasty = `"${markup}' ${escapeSequence} ${turned} | a\nb [l](javascript:alert(1)) \`c\` **d** &lt; http://x.example </style><script>alert(1)</script>`;

/** The same session, with everything a file or a stream can bring in turned hostile. */
export const hostile: SessionFacts = {
  ...weekend,
  port: `tcp://${nasty}`,
  started: nasty,
  machine: {
    ...weekend.machine,
    name: nasty,
    stand: nasty,
    inputs: [
      ...weekend.machine.inputs,
      input(
        'bad',
        { terminal: nasty, connector: nasty },
        {
          subject: 'bad',
          duty: ['limit'],
          place: nasty,
          circuit: { kind: 'contact to ground', supply: undefined, values: { 'pull-up': nasty } },
        },
      ),
    ],
  },
  verdicts: [
    ...weekend.verdicts,
    {
      check: 'press',
      subject: 'bad',
      status: 'failed',
      evidence: 'edge',
      findings: [{ kind: 'answers-elsewhere', input: 'bad', answeredBy: nasty }],
      missing: [],
      facts: { answeredBy: nasty },
      traces: [
        {
          label: 'press',
          from: ms(0),
          to: ms(9),
          samples: 1,
          signals: [{ input: nasty, points: [{ t: ms(0), level: 'H', active: '?' }] }],
        },
      ],
    },
  ],
  register: [{ subject: nasty, at: 'switch' }],
  dialogue: weekend.dialogue.map((ask) => ({ ...ask, text: nasty, cautions: [nasty] })),
  sent: [{ at: ms(1), text: nasty }],
  stream: { ...weekend.stream, inputs: [nasty] },
};
