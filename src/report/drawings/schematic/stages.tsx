import type { Stage } from '../../../model/wiring-names.ts';
import { type Drawn, sheet } from './sheet.ts';
import { Capacitance, Junction, Label, Light, Resistance, Voltage, Wire } from './symbols.tsx';

const { plus, signal, zero, pin, terminal } = sheet;
/** Where a pull-up hangs, where the filter does, where the coupler stands. */
const pullAt = 216;
const filterAt = 100;
const lightAt = 178;

/** The controller's side of the terminal, for each kind of input. */
export function StageView({ drawn }: { readonly drawn: Drawn }) {
  const View = stages[drawn.wiring.stage];
  return <View drawn={drawn} />;
}

type View = (given: { readonly drawn: Drawn }) => ReturnType<typeof Pin>;

/** The pin at the left, what it reads below it. */
function Pin({ drawn, from }: { readonly drawn: Drawn; readonly from: number }) {
  return (
    <g>
      <Wire from={[pin, signal]} to={[from, signal]} />
      <Wire from={[pin, signal]} to={[pin - 8, signal]} />
      <Voltage at={[pin, signal]} text={drawn.volts('pin')} place="above" />
      <Label at={[pin, signal + 20]} anchor="middle" text="pin" />
    </g>
  );
}

const Filter = ({ drawn }: { readonly drawn: Drawn }) => (
  <g>
    <Capacitance from={[filterAt, signal]} to={[filterAt, zero]} value={drawn.value('filter')} />
    <Junction at={[filterAt, signal]} />
    <Junction at={[filterAt, zero]} />
  </g>
);

const Rails = ({ upper, lower }: { readonly upper: string; readonly lower: string }) => (
  <g>
    <Wire from={[pin - 8, plus]} to={[terminal, plus]} />
    <Wire from={[pin - 8, zero]} to={[terminal, zero]} />
    <Label at={[pin - 8, plus - 8]} text={upper} />
    <Label at={[pin - 8, zero + 17]} text={lower} />
  </g>
);

const Pulled: View = ({ drawn }) => (
  <g>
    <Wire from={[pin - 8, plus]} to={[pullAt, plus]} />
    <Label at={[pin - 8, plus - 8]} text={`+ ${drawn.volts('logic +')}`} />
    <Wire from={[pin - 8, zero]} to={[terminal, zero]} />
    <Label at={[pin - 8, zero + 17]} text="0 V" />
    <Junction at={[pullAt, signal]} />
    <Resistance from={[pullAt, plus]} to={[pullAt, signal]} name="pull-up" value={drawn.value('pull-up')} />
    <Resistance from={[filterAt, signal]} to={[pullAt, signal]} name="series" value={drawn.value('series')} />
    <Filter drawn={drawn} />
    <Pin drawn={drawn} from={filterAt} />
    <Wire from={[pullAt, signal]} to={[terminal, signal]} />
  </g>
);

const PulledDown: View = ({ drawn }) => (
  <g>
    <Rails upper={`+ ${drawn.volts('field +')}`} lower="0 V" />
    <Junction at={[pullAt, signal]} />
    <Junction at={[pullAt, zero]} />
    <Resistance
      from={[pullAt, signal]}
      to={[pullAt, zero]}
      name="pull-down"
      value={drawn.value('pull-down')}
    />
    <Resistance from={[filterAt, signal]} to={[pullAt, signal]} name="series" value={drawn.value('series')} />
    <Filter drawn={drawn} />
    <Pin drawn={drawn} from={filterAt} />
    <Wire from={[pullAt, signal]} to={[terminal, signal]} />
  </g>
);

/** Kept clear of the terminal's own figures. */
const SeriesPart = ({ drawn }: { readonly drawn: Drawn }) => (
  <g>
    <Resistance
      from={[lightAt, signal]}
      to={[terminal - 30, signal]}
      name="series"
      value={drawn.value('series')}
    />
    <Wire from={[terminal - 30, signal]} to={[terminal, signal]} />
  </g>
);

const Divided: View = ({ drawn }) => (
  <g>
    <Rails upper={`+ ${drawn.volts('field +')}`} lower="0 V" />
    <SeriesPart drawn={drawn} />
    <Junction at={[lightAt, signal]} />
    <Junction at={[lightAt, zero]} />
    <Resistance from={[lightAt, signal]} to={[lightAt, zero]} name="divider" value={drawn.value('divider')} />
    <Filter drawn={drawn} />
    <Pin drawn={drawn} from={lightAt} />
  </g>
);

/** The isolated side stays apart from the logic's: only light goes between. */
const Output = ({ drawn }: { readonly drawn: Drawn }) => (
  <g>
    <rect x={pin + 40} y={signal - 8} width="34" height="64" fill="none" stroke="#000" stroke-width="1.4" />
    <Wire from={[pin, signal + 8]} to={[pin + 40, signal + 8]} />
    <Wire from={[pin, signal + 40]} to={[pin + 40, signal + 40]} />
    <Label at={[pin + 57, signal + 29]} anchor="middle" text="out" />
    <Voltage at={[pin, signal + 8]} text={drawn.volts('pin')} place="above" />
    <Label at={[pin - 6, signal + 26]} anchor="middle" text="pin" />
    <Label at={[pin, signal + 58]} anchor="middle" text="logic 0 V" />
  </g>
);

/** Above what any coupler takes for darkness, A. */
const lit = ({ amps }: Drawn): boolean => amps('light') > 0.5e-3;

const Fed: View = ({ drawn }) => (
  <g>
    <Rails upper={`+ ${drawn.volts('field +')}`} lower="field 0 V" />
    <SeriesPart drawn={drawn} />
    <Wire from={[lightAt, signal]} to={[lightAt, zero]} />
    <Light at={[lightAt, signal + 38]} lit={lit(drawn)} />
    {drawn.has('bleed') ? (
      <g>
        <Wire from={[lightAt, signal]} to={[lightAt + 50, signal + 1]} />
        <Resistance
          from={[lightAt + 50, signal]}
          to={[lightAt + 50, zero]}
          name="bleed"
          value={drawn.value('bleed')}
        />
      </g>
    ) : null}
    <Output drawn={drawn} />
  </g>
);

const DrawnFrom: View = ({ drawn }) => (
  <g>
    <Rails upper={`+ ${drawn.volts('field +')}`} lower="field 0 V" />
    <Wire from={[lightAt, plus]} to={[lightAt, signal]} />
    <Light at={[lightAt, plus + 62]} lit={lit(drawn)} />
    <SeriesPart drawn={drawn} />
    {drawn.has('bleed') ? (
      <g>
        <Resistance
          from={[lightAt + 50, plus]}
          to={[lightAt + 50, signal]}
          name="bleed"
          value={drawn.value('bleed')}
        />
      </g>
    ) : null}
    <Output drawn={drawn} />
  </g>
);

const stages = {
  'pull-up': Pulled,
  window: Pulled,
  'pull-down': PulledDown,
  divider: Divided,
  'fed optocoupler': Fed,
  'drawn optocoupler': DrawnFrom,
} as const satisfies Record<Stage, View>;
