import { visible } from '../../model/visible.ts';
import { traceText } from '../../words/trace-words.ts';
import type { Drawing } from '../document.ts';
import { Figure } from './figure.tsx';
import { type Lane, type PlottedSignal, plotOf } from './plot.ts';

const ends = {
  active: ['active', 'not'],
  level: ['high', 'low'],
} as const satisfies Record<Lane['of'], readonly [string, string]>;

/**
 * One cited span as SVG: black and grey only, told apart by line and shape. Every point carries its own reading as data, so that
 * the drawing can be checked against the record.
 */
export function Waveform({ drawing, id }: { readonly drawing: Drawing; readonly id: string }) {
  const { trace, title } = drawing;
  const plot = plotOf(trace);
  return (
    <Figure
      id={id}
      width={plot.width}
      height={plot.height}
      fontSize="9"
      title={visible(`${title}: ${trace.signals.map(({ input }) => input).join(', ')}`)}
      says={visible(traceText(trace))}
    >
      {plot.ticks.map(({ x }) => (
        <line key={x} x1={x} y1="14" x2={x} y2={plot.base + 3} stroke="#ccc" stroke-width="0.6" />
      ))}
      {plot.signals.map((signal) => (
        <Signal key={signal.input} signal={signal} left={plot.left} />
      ))}
      <line x1={plot.left} y1={plot.base} x2={plot.right} y2={plot.base} stroke="#000" stroke-width="0.6" />
      {plot.ticks.map(({ x, label }) => (
        <text
          key={label}
          x={x > plot.right - 12 ? plot.width : x}
          y={plot.base + 12}
          text-anchor={x > plot.right - 12 ? 'end' : 'middle'}
        >
          {label}
        </text>
      ))}
      <text x="0" y={plot.base + 12}>
        {plot.unit}
      </text>
    </Figure>
  );
}

function Signal({ signal, left }: { readonly signal: PlottedSignal; readonly left: number }) {
  return (
    <g data-input={visible(signal.input)}>
      <text x="0" y={signal.nameAt} font-weight="600">
        {visible(signal.input)}
      </text>
      {signal.lanes.map((lane) => (
        <LaneLines key={lane.of} lane={lane} left={left} />
      ))}
      {signal.points.map(({ x, y, t, level, active }) => (
        <circle key={t} cx={x} cy={y} r="1.5" data-t={t} data-level={level} data-active={active} />
      ))}
    </g>
  );
}

function LaneLines({ lane, left }: { readonly lane: Lane; readonly left: number }) {
  const [high, low] = ends[lane.of];
  const thick = lane.of === 'active' ? '1.8' : '1.1';
  return (
    <g>
      <text x={left - 4} y={lane.top + 3} text-anchor="end" font-size="8" fill="#333">
        {high}
      </text>
      <text x={left - 4} y={lane.bottom + 3} text-anchor="end" font-size="8" fill="#333">
        {low}
      </text>
      {lane.doubts.map(({ from, to, y1, y2 }) => (
        <g key={from}>
          <rect {...band(from, to)} y={lane.top} height={lane.bottom - lane.top} fill="#b4b4b4" />
          <line x1={from} y1={y1} x2={to} y2={y2} stroke="#000" stroke-width="0.7" stroke-dasharray="1 1" />
        </g>
      ))}
      {lane.runs.map(({ from, to, y, known }) => (
        <line
          key={from}
          x1={from}
          y1={y}
          x2={to}
          y2={y}
          stroke="#000"
          stroke-width={thick}
          {...(known && lane.of === 'active' ? {} : { 'stroke-dasharray': known ? '4 2' : '1 3' })}
        />
      ))}
    </g>
  );
}

/** Narrow bands are widened to what a printer can show; the dots keep their true places. */
function band(from: number, to: number): { readonly x: number; readonly width: number } {
  const width = Math.max(to - from, 3);
  return { x: Math.round((from + to - width) * 50) / 100, width: Math.round(width * 100) / 100 };
}
