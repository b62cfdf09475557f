import type { EnvelopeFacts } from '../../../model/envelope-facts.ts';
import type { End } from '../../../model/machine.ts';
import { visible } from '../../../model/visible.ts';
import { endWords, envelopeLabels } from '../../../words/motion/envelope-words.ts';
import { lengthText } from '../../../words/motion/lengths.ts';
import type { EndItem, EndPlot, EndSpan } from './end-plot.ts';

/** One end of an axis, drawn to scale. */
export function EndView({
  plot,
  end,
  unit,
  hatch,
  top,
}: {
  readonly plot: EndPlot;
  readonly end: End;
  readonly unit: EnvelopeFacts['unit'];
  readonly hatch: string;
  /** Where its name and ruler stand. */
  readonly top: number;
}) {
  const { from, to, base, metal, ruler } = plot;
  return (
    <g>
      <text x={from} y={top} font-weight="600">
        {endWords[end]}
      </text>
      {ruler === undefined ? null : <Ruler ruler={ruler} from={from} to={to} y={top - 4} unit={unit} />}
      {plot.items.length === 0 ? (
        <text x={from} y={base}>
          {envelopeLabels.unknown}
        </text>
      ) : (
        <line x1={from} y1={base} x2={to} y2={base} stroke="#000" stroke-width="1.2" />
      )}
      {metal === undefined ? null : (
        <rect
          x={metal.from}
          y={base - 14}
          width={Math.round((metal.to - metal.from) * 100) / 100}
          height="28"
          fill={`url(#${hatch})`}
          stroke="none"
        />
      )}
      {plot.spans.map((span) => (
        <path
          key={span.label}
          d={`M${span.from},${span.y + 4}V${base}M${span.to},${span.y + 4}V${base}`}
          fill="none"
          stroke="#bbb"
          stroke-width="0.7"
        />
      ))}
      {plot.spans.map((span) => (
        <SpanView key={span.label} span={span} />
      ))}
      {plot.items.map(({ kind, x, labelX, labelY }) => (
        <path
          key={kind}
          d={`M${x},${base + 9}L${labelX},${labelY - 10}`}
          fill="none"
          stroke="#777"
          stroke-width="0.7"
        />
      ))}
      {plot.items.map((item) => (
        <ItemView key={item.kind} item={item} base={base} inward={end === 'positive' ? -1 : 1} />
      ))}
    </g>
  );
}

/** Keeps a text legible where a thin line runs behind it. */
const halo = { stroke: '#fff', 'stroke-width': '3', 'paint-order': 'stroke' } as const;

function Ruler({
  ruler,
  to,
  y,
  unit,
}: {
  readonly ruler: NonNullable<EndPlot['ruler']>;
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly unit: EnvelopeFacts['unit'];
}) {
  const length = ruler.to - ruler.from;
  return (
    <g>
      <path d={`M${to - length},${y - 3}v6m0,-3H${to}m0,-3v6`} fill="none" stroke="#000" stroke-width="0.8" />
      <text x={to - length - 5} y={y + 4} text-anchor="end">
        {lengthText(ruler.length, unit)}
      </text>
    </g>
  );
}

function SpanView({ span }: { readonly span: EndSpan }) {
  const [low, high] = span.from < span.to ? [span.from, span.to] : [span.to, span.from];
  return (
    <g>
      <path d={`M${low},${span.y - 4}v8m0,-4H${high}m0,-4v8`} fill="none" stroke="#000" stroke-width="0.9" />
      <text x={span.labelX} y={span.y - 7} text-anchor="middle" {...halo}>
        {span.label}
      </text>
    </g>
  );
}

function ItemView({
  item,
  base,
  inward,
}: {
  readonly item: EndItem;
  readonly base: number;
  readonly inward: 1 | -1;
}) {
  const { kind, x } = item;
  return (
    <g data-item={kind} data-x={x}>
      <text x={item.labelX} y={item.labelY} text-anchor="middle" {...halo}>
        {visible(item.label)}
      </text>
      <line
        x1={x}
        y1={base - 14}
        x2={x}
        y2={base + 9}
        stroke="#000"
        stroke-width={kind === 'stop' ? '2.4' : '1.3'}
        {...(kind === 'soft' ? { 'stroke-dasharray': '4 2.5' } : {})}
      />
      {kind === 'trip' ? <path d={`M${x},${base - 14}l${inward * -9},5l${inward * 9},5z`} /> : null}
      {kind === 'home' ? (
        <circle cx={x} cy={base} r="4.5" fill="#fff" stroke="#000" stroke-width="1.5" />
      ) : null}
    </g>
  );
}
