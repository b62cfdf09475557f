/** The import law of the house: the data flows one way. Each rule says why it stands. */
const room = (name, mayUse, comment) => ({
  name: `${name}-keeps-its-room`,
  severity: 'error',
  comment,
  from: { path: `^src/${name}/` },
  to: { path: '^src/', pathNot: [name, ...mayUse].map((r) => `^src/${r}`) },
});

module.exports = {
  forbidden: [
    room('model', [], 'The nouns stand on nothing of ours, or every room would depend on every other.'),
    room('words', ['model/'], 'Sentences are said about the nouns, never about machinery.'),
    room(
      'transport',
      ['model/'],
      'Bytes become readings without knowing what anyone will conclude from them.',
    ),
    room('diagnose', ['model/'], 'A judge that reaches outside cannot be replayed from a saved session.'),
    room(
      'report',
      ['model/', 'words/'],
      'A document is made from verdicts alone, so that it can be made again anywhere.',
    ),
    room(
      'session',
      ['model/', 'words/', 'transport/', 'diagnose/', 'report/'],
      'The session joins the rooms; it knows no face and no bench.',
    ),
    room(
      'bench',
      ['model/', 'transport/stream/'],
      "The bench's truth is its own, or belief and world are one.",
    ),
    {
      name: 'judging-asks-nothing',
      severity: 'error',
      comment:
        'What asks gathers evidence for what judges; a judge that knows how to ask depends on more than its evidence.',
      from: { path: '^src/diagnose/', pathNot: '^src/diagnose/(checks|procedures|cause-finding)/' },
      to: { path: '^src/diagnose/(checks|procedures|cause-finding)/' },
    },
    {
      name: 'one-door-to-the-bench',
      severity: 'error',
      comment: 'Only one file wires the bench in; everything else meets it through a Source.',
      from: {
        path: '^src/',
        pathNot: ['^src/bench/', '^src/console/bench-wiring\\.ts$', '^src/console/commands/bench\\.ts$'],
      },
      to: { path: '^src/bench/' },
    },
    {
      name: 'no-cycles',
      severity: 'error',
      comment: 'A cycle has no order to read it in.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'pure-rooms-do-no-io',
      severity: 'error',
      comment: 'Time, files and ports are handed in as data; a verdict must be the same on every machine.',
      from: { path: '^src/(model|words|diagnose|report)/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'one-file-touches-the-wire',
      severity: 'error',
      comment: 'The serial binding has one owner, so that what opening a port does is said in one place.',
      from: { path: '^src/', pathNot: '^src/transport/serial' },
      to: { path: 'node_modules/(serialport|@serialport)' },
    },
    {
      name: 'one-file-knows-the-screen',
      severity: 'error',
      comment: 'The terminal library draws; it decides nothing.',
      from: { path: '^src/', pathNot: '^src/console/screen\\.ts$' },
      to: { path: 'node_modules/(blessed|@types/blessed)' },
    },
    {
      name: 'no-utils',
      severity: 'error',
      comment: 'A folder of leftovers has no question it answers.',
      from: {},
      to: { path: '/utils?/', pathNot: 'node_modules' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.js'],
    },
  },
};
