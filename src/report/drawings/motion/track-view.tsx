import type { AxisTrack } from '../../../model/motion-facts.ts';
import { visible } from '../../../model/visible.ts';
import { trackLabels, trackText } from '../../../words/motion/track-words.ts';
import { Figure } from '../figure.tsx';
import { MarkShape } from './mark-shape.tsx';
import { type TrackMark, type TrackPlot, trackPlot } from './track-plot.ts';

/** One motion of one axis as SVG: position over time, black and grey, every event numbered as in the table beside it. */
export function TrackView({ track, id }: { readonly track: AxisTrack; readonly id: string }) {
  const plot = trackPlot(track);
  const { box } = plot;
  return (
    <Figure
      id={id}
      width={plot.width}
      height={plot.height}
      fontSize="11"
      title={`${trackLabels[track.label]}, axis ${track.axis}`}
      says={visible(trackText(track))}
    >
      <Grid plot={plot} unit={track.unit} />
      {plot.marks.map((mark) => (
        <Moment key={mark.number} mark={mark} box={box} />
      ))}
      <path d={plot.path} fill="none" stroke="#000" stroke-width="1.8" stroke-linejoin="round" />
      {plot.marks.map((mark) => (
        <Place key={mark.number} mark={mark} />
      ))}
      {track.expected === undefined ? null : <Expected up={track.expected === 1} box={box} />}
    </Figure>
  );
}

function Grid({ plot, unit }: { readonly plot: TrackPlot; readonly unit: AxisTrack['unit'] }) {
  const { box } = plot;
  return (
    <g>
      {plot.across.map(({ x, label }) => (
        <g key={label}>
          <line x1={x} y1={box.top} x2={x} y2={box.bottom + 4} stroke="#ccc" stroke-width="0.7" />
          <text x={x} y={box.bottom + 17} text-anchor="middle">
            {label}
          </text>
        </g>
      ))}
      {plot.up.map(({ y, label }) => (
        <g key={label}>
          <line x1={box.left - 4} y1={y} x2={box.right} y2={y} stroke="#ccc" stroke-width="0.7" />
          <text x={box.left - 8} y={y + 4} text-anchor="end">
            {label}
          </text>
        </g>
      ))}
      <path
        d={`M${box.left},${box.top}V${box.bottom}H${box.right}`}
        fill="none"
        stroke="#000"
        stroke-width="0.8"
      />
      <text x={box.right} y={box.bottom + 31} text-anchor="end">
        seconds from the first report
      </text>
      <text x={box.left} y={box.bottom + 31}>
        {unit === 'mm' ? 'commanded position, mm' : 'commanded position, degrees'}
      </text>
    </g>
  );
}

/** When it was: a band from the last report before it to the first after it. */
function Moment({ mark, box }: { readonly mark: TrackMark; readonly box: TrackPlot['box'] }) {
  const middle = Math.round((mark.from + mark.to) * 50) / 100;
  const width = Math.max(mark.to - mark.from, 1);
  return (
    <g>
      <rect
        x={Math.round((middle - width / 2) * 100) / 100}
        y={box.top}
        width={Math.round(width * 100) / 100}
        height={box.bottom - box.top}
        fill={mark.kind === 'alarm' ? '#000' : '#b4b4b4'}
      />
      <path
        d={`M${middle},${box.top}L${mark.nameX},${mark.nameY + 3}`}
        fill="none"
        stroke="#777"
        stroke-width="0.7"
      />
      <text x={mark.nameX} y={mark.nameY} text-anchor="middle" font-weight="600">
        {mark.number}
      </text>
    </g>
  );
}

/** Where it was: the shape at the middle of all places it can have been, and a bar over them. */
function Place({ mark }: { readonly mark: TrackMark }) {
  if (mark.y === undefined) return null;
  const x = Math.round((mark.from + mark.to) * 50) / 100;
  const y = Math.round((mark.y.low + mark.y.high) * 50) / 100;
  return (
    <g>
      <line x1={x} y1={mark.y.low} x2={x} y2={mark.y.high} stroke="#000" stroke-width="3" />
      <MarkShape kind={mark.kind} x={x} y={y} />
    </g>
  );
}

function Expected({ up, box }: { readonly up: boolean; readonly box: TrackPlot['box'] }) {
  const x = box.right + 16;
  const [tail, head] = up ? [box.bottom - 20, box.top + 20] : [box.top + 20, box.bottom - 20];
  const back = up ? 9 : -9;
  const middle = (tail + head) / 2;
  return (
    <g>
      <line x1={x} y1={tail} x2={x} y2={head + back} stroke="#000" stroke-width="1.4" />
      <path d={`M${x - 5},${head + back}h10L${x},${head}z`} />
      <text x={x + 15} y={middle} text-anchor="middle" transform={`rotate(90 ${x + 15} ${middle})`} dy="4">
        expected way
      </text>
    </g>
  );
}
