import type { ComponentChildren } from 'preact';

/** Symbols after IEC 60617, drawn in black; every state is told by shape. */
export type Spot = readonly [x: number, y: number];

export const Wire = ({ from, to }: { readonly from: Spot; readonly to: Spot }) => (
  <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} stroke="#000" stroke-width="1.4" />
);

/** A resistance between two spots on one line, its name and value beside it. */
export function Resistance({
  from,
  to,
  name = '',
  value = '',
}: {
  from: Spot;
  to: Spot;
  name?: string;
  value?: string;
}) {
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const upright = from[0] === to[0];
  const [width, height] = upright ? [13, 36] : [36, 13];
  return (
    <g>
      <Wire from={from} to={upright ? [x, y - 18] : [x - 18, y]} />
      <Wire from={upright ? [x, y + 18] : [x + 18, y]} to={to} />
      <rect
        x={x - width / 2}
        y={y - height / 2}
        width={width}
        height={height}
        fill="#fff"
        stroke="#000"
        stroke-width="1.4"
      />
      <Label at={upright ? [x + 12, y - 3] : [x, y - 26]} anchor={upright ? 'start' : 'middle'} text={name} />
      <Label
        at={upright ? [x + 12, y + 11] : [x, y - 12]}
        anchor={upright ? 'start' : 'middle'}
        text={value}
      />
    </g>
  );
}

export function Label(given: {
  readonly at: Spot;
  readonly text: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly size?: number;
}) {
  const { at, text, anchor = 'start', bold = false, size = 13 } = given;
  return (
    <text
      x={at[0]}
      y={at[1]}
      text-anchor={anchor}
      font-size={size}
      font-weight={bold ? '700' : '400'}
      stroke="#fff"
      stroke-width="3"
      paint-order="stroke"
      stroke-linejoin="round"
    >
      {text}
    </text>
  );
}

/** Where wires meet. */
export function Junction({ at }: { readonly at: Spot }) {
  return <circle cx={at[0]} cy={at[1]} r="2.2" />;
}

const labelSpots = {
  above: { by: [0, -9], anchor: 'middle' },
  below: { by: [0, 19], anchor: 'middle' },
  before: { by: [-7, -9], anchor: 'end' },
} as const;

/** A node with its computed voltage; the dot is where a probe goes. */
export function Voltage(given: {
  readonly at: Spot;
  readonly text: string;
  readonly place: keyof typeof labelSpots;
}) {
  const { at, text, place } = given;
  const { by, anchor } = labelSpots[place];
  return (
    <g>
      <circle cx={at[0]} cy={at[1]} r="3" />
      <Label at={[at[0] + by[0], at[1] + by[1]]} anchor={anchor} text={text} bold size={14} />
    </g>
  );
}

export function Terminal({ at }: { readonly at: Spot }) {
  return <circle cx={at[0]} cy={at[1]} r="4.5" fill="#fff" stroke="#000" stroke-width="1.4" />;
}

/** An upright contact: its blade lies on the wire when closed and stands off when open. */
export function ContactBlade({ at, closed }: { readonly at: Spot; readonly closed: boolean }) {
  const [x, y] = at;
  return (
    <g stroke="#000" stroke-width="1.8">
      <line x1={x} y1={y + 16} x2={closed ? x : x - 15} y2={closed ? y - 16 : y - 14} />
      <circle cx={x} cy={y - 16} r="2.2" fill="#fff" stroke-width="1.4" />
      <circle cx={x} cy={y + 16} r="2.2" fill="#fff" stroke-width="1.4" />
    </g>
  );
}

/** A light in a coupler, current downwards, with its two arrows. */
export function Light({ at, lit }: { readonly at: Spot; readonly lit: boolean }) {
  const [x, y] = at;
  return (
    <g stroke="#000" stroke-width="1.4">
      <polygon points={`${x - 10},${y - 9} ${x + 10},${y - 9} ${x},${y + 8}`} fill={lit ? '#000' : '#fff'} />
      <line x1={x - 10} y1={y + 9} x2={x + 10} y2={y + 9} />
      {[-3, 4].map((down) => (
        <g key={down}>
          <line x1={x - 14} y1={y + down} x2={x - 27} y2={y + down + 6} />
          <polygon
            points={`${x - 29},${y + down + 7} ${x - 24},${y + down + 1.5} ${x - 22},${y + down + 6}`}
            fill="#000"
            stroke="none"
          />
        </g>
      ))}
    </g>
  );
}

export function Capacitance({
  from,
  to,
  value,
}: {
  readonly from: Spot;
  readonly to: Spot;
  readonly value: string;
}) {
  const y = (from[1] + to[1]) / 2;
  const [x] = from;
  return (
    <g>
      <Wire from={from} to={[x, y - 4]} />
      <Wire from={[x, y + 4]} to={to} />
      <line x1={x - 10} y1={y - 4} x2={x + 10} y2={y - 4} stroke="#000" stroke-width="2" />
      <line x1={x - 10} y1={y + 4} x2={x + 10} y2={y + 4} stroke="#000" stroke-width="2" />
      <Label at={[x + 13, y + 4]} text={value} />
    </g>
  );
}

export function Frame(given: {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly dashed?: boolean;
  readonly children?: ComponentChildren;
}) {
  const { x, y, width, height, title, dashed = false, children } = given;
  return (
    <g>
      <rect
        x={x}
        y={y}
        width={width}
        height={height}
        rx="3"
        fill="none"
        stroke="#555"
        {...(dashed ? { 'stroke-dasharray': '5 3' } : {})}
      />
      <Label at={[x + width / 2, y - 5]} anchor="middle" text={title} />
      {children}
    </g>
  );
}

/** A wire that is cut: two ends and a cross between them. */
export function Cut({ at }: { readonly at: Spot }) {
  const [x, y] = at;
  return (
    <g stroke="#000" stroke-width="2.4">
      <rect x={x - 9} y={y - 9} width="18" height="18" fill="#fff" stroke="none" />
      <line x1={x - 7} y1={y - 7} x2={x + 7} y2={y + 7} />
      <line x1={x + 7} y1={y - 7} x2={x - 7} y2={y + 7} />
    </g>
  );
}
