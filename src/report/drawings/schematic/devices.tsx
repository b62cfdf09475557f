import type { Device } from '../../../model/wiring-names.ts';
import { deviceWords } from '../../../words/wiring/circuit-words.ts';
import { ampText } from '../../../words/wiring/quantities.ts';
import { type Drawn, sheet } from './sheet.ts';
import { ContactBlade, Cut, Frame, Label, Resistance, Terminal, Voltage, Wire } from './symbols.tsx';

const { plus, signal, zero, terminal, far } = sheet;
const cableAt = 376;

/** The cable and whatever stands at its far end. */
export function FieldView({ drawn }: { readonly drawn: Drawn }) {
  const { joins, device } = drawn.wiring;
  const common = joins === '0 V' ? zero : plus;
  const View = isThreeWire(device) ? Sensor : Contact;
  return (
    <g>
      <Cable drawn={drawn} common={common} threeWire={isThreeWire(device)} />
      <View drawn={drawn} common={common} />
      <Voltage at={[terminal, signal]} text={drawn.volts('terminal')} place="above" />
      <Terminal at={[terminal, signal]} />
    </g>
  );
}

const isThreeWire = (device: Device): boolean =>
  device === 'npn' || device === 'pnp' || device === 'hall' || device === 'optical';

function Cable({ drawn, common, threeWire }: { drawn: Drawn; common: number; threeWire: boolean }) {
  const rails = threeWire ? [plus, zero] : [common];
  return (
    <g>
      <Wire from={[terminal, signal]} to={[far, signal]} />
      {rails.map((rail) => (
        <g key={rail}>
          <Wire from={[terminal, rail]} to={[far, rail]} />
          <Terminal at={[terminal, rail]} />
        </g>
      ))}
      {threeWire && drawn.wiring.stage === 'pull-up' ? (
        <Label at={[terminal - 8, plus + 4]} anchor="end" text={drawn.volts('field +')} />
      ) : null}
      {drawn.state.state === 'broken' ? <Cut at={[cableAt, signal]} /> : null}
      <Label
        at={[cableAt, common === zero ? zero - 9 : plus + 19]}
        anchor="middle"
        text={`cable ${drawn.value('cable')}`}
      />
      <Label at={[cableAt, signal + 19]} anchor="middle" text="signal core" />
    </g>
  );
}

type Given = { readonly drawn: Drawn; readonly common: number };

function Contact({ drawn, common }: Given) {
  const { device, joined, contact } = drawn.wiring;
  const middle = (signal + common) / 2;
  const up = common < signal;
  const further = joined === 'single' && device !== 'touch probe' ? [] : [1, 2];
  return (
    <g>
      {drawn.has('contact resistor') ? (
        <Supervised drawn={drawn} common={common} />
      ) : joined === 'parallel' ? (
        [0, ...further].map((leg) => (
          <Leg
            key={leg}
            x={far - leg * 45}
            common={common}
            closed={leg === 0 ? drawn.state.closed : contact === 'normally closed'}
          />
        ))
      ) : further.length > 0 ? (
        <Chain drawn={drawn} common={common} />
      ) : (
        <Leg x={far} common={common} closed={drawn.state.closed} />
      )}
      <Voltage at={[far, signal]} text={drawn.volts('device signal')} place={up ? 'below' : 'above'} />
      <Voltage at={[far, common]} text={drawn.volts('device common')} place={up ? 'above' : 'below'} />
      <Label at={[far + 16, middle - 3]} text={deviceWords[device]} />
      <Label at={[far + 16, middle + 12]} text={currentText(drawn)} />
    </g>
  );
}

const currentText = ({ amps }: Drawn): string => ampText(Math.abs(amps('signal clamp')));

function Leg({
  x,
  common,
  closed,
}: {
  readonly x: number;
  readonly common: number;
  readonly closed: boolean;
}) {
  const middle = (signal + common) / 2;
  const [upper, lower] = common < signal ? [common, signal] : [signal, common];
  return (
    <g>
      <Wire from={[x, upper]} to={[x, middle - 16]} />
      <Wire from={[x, middle + 16]} to={[x, lower]} />
      <ContactBlade at={[x, middle]} closed={closed} />
    </g>
  );
}

/** Three contacts one below the other; the pressed one is the uppermost. */
function Chain({ drawn }: Given) {
  const spots = [signal + 24, (signal + zero) / 2, zero - 24];
  return (
    <g>
      <Wire from={[far, signal]} to={[far, spots[0] ?? signal]} />
      {spots.map((y, at) => (
        <g key={y}>
          <g transform={`translate(${far},${y}) scale(0.8) translate(${-far},${-y})`}>
            <ContactBlade at={[far, y]} closed={at === 0 ? drawn.state.closed : true} />
          </g>
        </g>
      ))}
      <Wire from={[far, zero - 11]} to={[far, zero]} />
    </g>
  );
}

function Supervised({ drawn }: Given) {
  const split = signal + 50;
  return (
    <g>
      <Resistance
        from={[far, signal]}
        to={[far, split]}
        name="before"
        value={drawn.value('contact resistor')}
      />
      <Wire from={[far, split]} to={[far, split + 20]} />
      <g transform={`translate(0,${(split + zero) / 2 - (signal + zero) / 2 + 2})`}>
        <ContactBlade at={[far, (signal + zero) / 2]} closed={drawn.state.closed} />
      </g>
      <Wire from={[far, zero - 20]} to={[far, zero]} />
      <Wire from={[far, split]} to={[far - 62, split]} />
      <Resistance from={[far - 62, split]} to={[far - 62, zero]} />
      <Label at={[far - 74, (split + zero) / 2 + 4]} anchor="end" text={drawn.value('end resistor')} />
    </g>
  );
}

/** A sensor: + above, 0 V below, its output to the left; the blade shows which rail it joins. */
function Sensor({ drawn }: Given) {
  const { device } = drawn.wiring;
  const box = { x: far - 30, y: signal - 62, width: 96, height: 124 } as const;
  const toPlus = device === 'pnp';
  const middle = toPlus ? signal - 31 : signal + 31;
  return (
    <g>
      <Wire from={[far, plus]} to={[far, box.y]} />
      <Wire from={[far, zero]} to={[far, box.y + box.height]} />
      <Wire from={[far, toPlus ? box.y : signal]} to={[far, middle - 16]} />
      <Wire from={[far, middle + 16]} to={[far, toPlus ? signal : box.y + box.height]} />
      <ContactBlade at={[far, middle]} closed={drawn.state.closed} />
      <Frame {...box} title="" />
      <Label at={[far + 12, signal - 4]} text={deviceWords[device].split(' ')[0] ?? ''} bold />
      <Label at={[far + 12, signal + 12]} text={currentText(drawn)} />
      <Voltage at={[far - 30, signal]} text={drawn.volts('device signal')} place="before" />
      <Voltage at={[far, plus]} text={drawn.volts('device supply')} place="above" />
      <Voltage at={[far, zero]} text={drawn.volts('device common')} place="below" />
    </g>
  );
}
