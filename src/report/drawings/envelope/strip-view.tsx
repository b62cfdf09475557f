import { visible } from '../../../model/visible.ts';
import type { StripPart, StripPlot } from './strip-plot.ts';

/** The whole axis in one strip. */
export function StripView({ plot, hatch }: { readonly plot: StripPlot; readonly hatch: string }) {
  const { from, to, base, soft, stops, trips, home, ticks } = plot;
  const width = (a: number, b: number) => Math.round((b - a) * 100) / 100;
  const [lowest, highest] = [Math.min(...stops, to), Math.max(...stops, from)];
  return (
    <g>
      {soft === undefined ? null : (
        <rect x={soft.from} y={base - 7} width={width(soft.from, soft.to)} height="14" fill="#ddd" />
      )}
      {stops.length > 0 && lowest < (from + to) / 2 ? (
        <rect x={from} y={base - 9} width={width(from, lowest)} height="18" fill={`url(#${hatch})`} />
      ) : null}
      {stops.length > 0 && highest > (from + to) / 2 ? (
        <rect x={highest} y={base - 9} width={width(highest, to)} height="18" fill={`url(#${hatch})`} />
      ) : null}
      <line x1={from} y1={base} x2={to} y2={base} stroke="#000" stroke-width="1.1" />
      {ticks.map(({ x, label }) => (
        <g key={label}>
          <line x1={x} y1={base} x2={x} y2={base + 11} stroke="#888" stroke-width="0.7" />
          <text x={x} y={base + 23} text-anchor="middle">
            {label}
          </text>
        </g>
      ))}
      {trips.map((x) => (
        <path key={x} d={`M${x},${base - 10}v20`} stroke="#000" stroke-width="1.8" />
      ))}
      {home === undefined ? null : (
        <circle cx={home} cy={base} r="4" fill="#fff" stroke="#000" stroke-width="1.4" />
      )}
      {plot.origins.map(({ x, label, labelX, labelY }) => (
        <g key={label} data-origin={x}>
          <path d={`M${x},${base}L${labelX},${labelY + 3}`} fill="none" stroke="#777" stroke-width="0.7" />
          <path d={`M${x - 4},${base}l4,-4l4,4l-4,4z`} />
          <text
            x={labelX}
            y={labelY}
            text-anchor="middle"
            stroke="#fff"
            stroke-width="3"
            paint-order="stroke"
          >
            {visible(label)}
          </text>
        </g>
      ))}
      {plot.parts.map((part) => (
        <PartView key={part.label} part={part} from={from} to={to} />
      ))}
    </g>
  );
}

function PartView({
  part,
  from,
  to,
}: {
  readonly part: StripPart;
  readonly from: number;
  readonly to: number;
}) {
  const { y } = part;
  const width = (a: number, b: number) => Math.max(Math.round((b - a) * 100) / 100, 1);
  return (
    <g>
      <rect
        x={part.from}
        y={y - 8}
        width={width(part.from, part.to)}
        height="8"
        fill="#fff"
        stroke="#000"
        stroke-width="0.9"
      />
      {part.outside.map((each) => (
        <rect key={each.from} x={each.from} y={y - 8} width={width(each.from, each.to)} height="8" />
      ))}
      <text x={Math.round(Math.max(from, Math.min(part.from, to - 220)) * 100) / 100} y={y + 13}>
        {visible(part.outside.length > 0 ? `${part.label}: filled part is outside` : part.label)}
      </text>
    </g>
  );
}
