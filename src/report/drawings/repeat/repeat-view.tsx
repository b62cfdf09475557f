import type { RepeatFacts } from '../../../model/repeat-facts.ts';
import { visible } from '../../../model/visible.ts';
import { repeatText } from '../../../words/motion/repeat-words.ts';
import { Figure } from '../figure.tsx';
import { extremesOf, repeatPlot } from './repeat-plot.ts';

/** Trip places run by run as SVG: each bar is all places it can have been, the grey band the accepted span. */
export function RepeatView({ facts, id }: { readonly facts: RepeatFacts; readonly id: string }) {
  const { box, up, mean, tolerance, runs } = repeatPlot({ ...facts, ...extremesOf(facts) });
  return (
    <Figure
      id={id}
      width={640}
      height={212}
      fontSize="11"
      title={`Trip places of ${facts.axis}`}
      says={visible(repeatText(facts))}
    >
      <rect
        x={box.left}
        y={tolerance.top}
        width={box.right - box.left}
        height={Math.round((tolerance.bottom - tolerance.top) * 100) / 100}
        fill="#e4e4e4"
      />
      {up.map(({ y, label }) => (
        <g key={label}>
          <line x1={box.left - 4} y1={y} x2={box.right} y2={y} stroke="#ccc" stroke-width="0.7" />
          <text x={box.left - 8} y={y + 4} text-anchor="end">
            {label}
          </text>
        </g>
      ))}
      <line
        x1={box.left}
        y1={mean}
        x2={box.right}
        y2={mean}
        stroke="#000"
        stroke-width="0.9"
        stroke-dasharray="5 3"
      />
      <path
        d={`M${box.left},${box.top}V${box.bottom}H${box.right}`}
        fill="none"
        stroke="#000"
        stroke-width="0.8"
      />
      {runs.map(({ number, x, top, bottom, outlier }) => (
        <g key={number} data-run={number}>
          <line x1={x} y1={top} x2={x} y2={bottom} stroke="#000" stroke-width="3" />
          <circle
            cx={x}
            cy={Math.round((top + bottom) * 50) / 100}
            r="4"
            fill={outlier ? '#fff' : '#000'}
            stroke="#000"
            stroke-width="1.5"
          />
          <text x={x} y={box.bottom + 16} text-anchor="middle">
            {number}
          </text>
        </g>
      ))}
      <text x={box.left} y={box.bottom + 31}>
        {facts.unit === 'mm' ? 'mm from the mean' : 'degrees from the mean'}
      </text>
      <text x={box.right} y={box.bottom + 31} text-anchor="end">
        run
      </text>
    </Figure>
  );
}
