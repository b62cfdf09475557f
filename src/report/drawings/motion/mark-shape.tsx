import type { TrackEventKind } from '../../../words/motion/track-words.ts';

/** One shape for each kind of event, told apart without colour. */
export function MarkShape({
  kind,
  x,
  y,
}: {
  readonly kind: TrackEventKind;
  readonly x: number;
  readonly y: number;
}) {
  const white = { fill: '#fff', stroke: '#000', 'stroke-width': '1.5' };
  switch (kind) {
    case 'trip':
      return <rect x={x - 4.5} y={y - 4.5} width="9" height="9" />;
    case 'wrong-trip':
      return (
        <path
          d={`M${x - 5},${y - 5}l10,10M${x - 5},${y + 5}l10,-10`}
          fill="none"
          stroke="#000"
          stroke-width="2.6"
        />
      );
    case 'free':
      return <rect x={x - 4} y={y - 4} width="8" height="8" {...white} />;
    case 'reversal':
      return <circle cx={x} cy={y} r="4" {...white} />;
    case 'zero':
      return <path d={`M${x - 6},${y}l6,-6l6,6l-6,6z`} {...white} />;
    case 'alarm':
      return null;
  }
}
