import {
  type Control,
  type Diode,
  ground,
  middling,
  type Network,
  type Node,
  nodesOf,
  type Switch,
  type UnitPosition,
} from '../../src/diagnose/circuit/network.ts';

/**
 * `find` tells which nodes follow a shunt that no wiring notices (how well they do is no matter), `solve` solves with those nodes tied
 * down. Where ngspice cannot reach that precision, `coarse` still is a hundred times finer than what is compared.
 */
export const runs = {
  find: { shuntOhms: 1e12, options: 'reltol=1e-3 abstol=1e-9 vntol=1e-2' },
  solve: { shuntOhms: 1e9, options: 'reltol=1e-6 abstol=1e-13 vntol=1e-7' },
  /** A shunt that carries what a logic pin leaks, in and out. */
  leak: { shuntOhms: 1e7, options: 'reltol=1e-5 abstol=1e-12 vntol=1e-5' },
  coarse: { shuntOhms: 1e9, options: 'reltol=1e-5 abstol=1e-11 vntol=1e-5' },
} as const;
export type Run = keyof typeof runs;

export interface Deck {
  readonly text: string;
  /** Name in the deck -> which network, which node. */
  readonly nodes: ReadonlyMap<string, { readonly network: number; readonly node: Node }>;
  /** Source of no volts in the deck -> the part whose current it reads. */
  readonly senses: ReadonlyMap<string, { readonly network: number; readonly part: string }>;
}

/** One network, the state its controlled outputs are in, and the nodes that get a shunt. */
export interface Ask {
  readonly network: Network;
  readonly works: (output: string) => boolean;
  readonly shunted: (node: Node) => boolean;
}

/** Many networks side by side in one deck; their nodes are theirs alone, only ground is shared. */
export function deckOf(asks: readonly Ask[], raw: string, run: Run): Deck {
  const nodes = new Map<string, { network: number; node: Node }>();
  const lines = asks.flatMap(({ network, works, shunted }, at) => {
    const names = new Map(nodesOf(network).map((node, i) => [node, node === ground ? '0' : `n${at}_${i}`]));
    for (const [node, name] of names) if (node !== ground) nodes.set(name, { network: at, node });
    const name = (node: Node) => names.get(node) ?? '0';
    const shunts = [...names].filter(([node]) => node !== ground && shunted(node));
    return [
      ...network.flatMap((element, i) =>
        element.kind === 'capacitor' ? [] : lineOf(element, network, `${at}_${i}`, at, name, works),
      ),
      ...shunts.map(([, node], i) => `Rshunt${at}_${i} ${node} probe ${runs[run].shuntOhms}`),
    ];
  });
  const text = [
    '* generated',
    ...lines,
    'Vprobe probe 0 DC 0',
    `.options ${runs[run].options} gmin=1e-15 itl1=3000 temp=26.85 tnom=26.85`,
    '.control',
    'set filetype=ascii',
    'set numdgt=12',
    'op',
    `write ${raw}.0`,
    'alter vprobe dc = 10',
    'op',
    `write ${raw}.1`,
    'quit',
    '.endc',
    '.end',
    '',
  ].join('\n');
  const senses = new Map(
    asks.flatMap(({ network }, at) =>
      network.flatMap((each) =>
        each.kind === 'diode' && isSensed(each, network)
          ? [[`v${senseOf(network, each.name, at)}`, { network: at, part: each.name }] as const]
          : [],
      ),
    ),
  );
  return { text, nodes, senses };
}

function lineOf(
  element: Exclude<Network[number], { kind: 'capacitor' }>,
  network: Network,
  id: string,
  at: number,
  name: (node: Node) => string,
  works: (name: string) => boolean,
): readonly string[] {
  const [from, to] = [name(element.from), name(element.to)];
  switch (element.kind) {
    case 'resistor':
      if (!Number.isFinite(element.ohms)) return [];
      return element.ohms === 0 ? [`V${id} ${from} ${to} DC 0`] : [`R${id} ${from} ${to} ${element.ohms}`];
    case 'voltage':
      return [`V${id} ${from} ${to} DC ${element.volts}`];
    case 'current':
      return [`I${id} ${from} ${to} DC ${element.amps}`];
    case 'diode':
      return diodeLines(element, network, id, at, from, to);
    case 'switch':
      return [switchLine(element, works(element.name), id, from, to)];
  }
}

const isSensed = ({ name }: Diode, network: Network): boolean =>
  network.some(
    (each) =>
      each.kind === 'switch' && each.when?.some((when) => when.by === 'current' && when.through === name),
  );

/** A junction whose current controls something carries a source of no volts to read it from. */
function diodeLines(
  diode: Diode,
  network: Network,
  id: string,
  at: number,
  from: string,
  to: string,
): readonly string[] {
  const model = `.model M${id} D(IS=${diode.saturation} N=${diode.ideality})`;
  if (!isSensed(diode, network)) return [`D${id} ${from} ${to} M${id}`, model];
  return [`V${senseOf(network, diode.name, at)} ${from} s${id} DC 0`, `D${id} s${id} ${to} M${id}`, model];
}

const senseOf = (network: Network, diode: string, at: number): string =>
  `sense${at}_${network.findIndex(({ name }) => name === diode)}`;

/**
 * A controlled output is handed over in the state it has to be shown in; whether its controls agree with that state is asked of the
 * other solver's own voltages and currents afterwards.
 */
function switchLine(element: Switch, works: boolean, id: string, from: string, to: string): string {
  const conducts = element.closed && (element.when === undefined || works);
  return `R${id} ${from} ${to} ${conducts ? element.closedOhms : element.openOhms}`;
}

/** How far a control stands above the threshold of a unit, by voltages and sensed currents of one network. */
export const aboveThreshold = (
  control: Control,
  volts: (node: Node) => number,
  amps: (part: string) => number,
  unit: UnitPosition = middling,
): number =>
  (control.by === 'voltage' ? volts(control.plus) - volts(control.minus) : amps(control.through)) -
  (control.off + unit * (control.on - control.off));
