import type { Side } from '../../../model/machine.ts';
import { visible } from '../../../model/visible.ts';
import { sketchText, sketchWords } from '../../../words/motion/sketch-words.ts';
import { Figure } from '../figure.tsx';
import { type Plan, type PlanArrow, planOf, type SketchOf } from './plan.ts';

const table = { left: 70, right: 350, top: 26, bottom: 226 } as const;
const middle = { x: 210, y: 126 } as const;
/** Arrows along the same line stand this far apart. */
const apart = 30;
const corner = 34;
/** Where the sketch of up and down stands. */
const upright = 470;

/** The machine from above, for whoever stands where its file says: positive directions and home corner. Black and grey. */
export function SketchView({ sketch, id }: { readonly sketch: SketchOf; readonly id: string }) {
  const plan = planOf(sketch);
  const flat = plan.arrows.filter(({ side }) => side !== 'top' && side !== 'bottom');
  const tall = plan.arrows.filter(({ side }) => side === 'top' || side === 'bottom');
  return (
    <Figure
      id={id}
      width={560}
      height={288}
      fontSize="12"
      title="Coordinate sketch"
      says={visible(sketchText(plan))}
    >
      <rect
        x={table.left}
        y={table.top}
        width={table.right - table.left}
        height={table.bottom - table.top}
        fill="none"
        stroke="#000"
        stroke-width="1.2"
      />
      <Edges />
      <HomeCorner home={plan.home} />
      {flat.map((arrow, i) => (
        <FlatArrow key={`${arrow.axis}${arrow.kind}`} arrow={arrow} at={rankOf(flat, i)} />
      ))}
      <Upright arrows={tall} home={plan.home} />
      <Stand />
    </Figure>
  );
}

function Edges() {
  const edge = { fill: '#555', 'text-anchor': 'middle' } as const;
  return (
    <g>
      <text x={middle.x} y={table.top - 8} {...edge}>
        back
      </text>
      <text x={table.left - 26} y={middle.y + 4} {...edge}>
        left
      </text>
      <text x={table.right + 28} y={middle.y + 4} {...edge}>
        right
      </text>
      <text x={table.left + 4} y={table.bottom + 17} fill="#555">
        front
      </text>
    </g>
  );
}

function Stand() {
  return (
    <g>
      <path d={`M${middle.x - 9},${table.bottom + 32}a9,9 0 0 1 18,0z`} />
      <circle cx={middle.x} cy={table.bottom + 17} r="5.5" />
      <text x={middle.x} y={table.bottom + 50} text-anchor="middle">
        {sketchWords.standing}
      </text>
    </g>
  );
}

/** How many arrows along the same line came before. */
const rankOf = (arrows: readonly PlanArrow[], i: number): number =>
  arrows.slice(0, i).filter(({ side }) => isAcross(side) === isAcross(arrows[i]?.side)).length;
const isAcross = (side: Side | undefined): boolean => side === 'left' || side === 'right';

function FlatArrow({ arrow, at }: { readonly arrow: PlanArrow; readonly at: number }) {
  const way = arrow.side === 'right' || arrow.side === 'front' ? 1 : -1;
  const label = `${arrow.axis}+${arrow.kind === 'really' ? ' really' : ''}`;
  const line = lineOf(arrow);
  if (isAcross(arrow.side)) {
    const y = middle.y + at * apart;
    const tip = middle.x + way * 84;
    return (
      <g data-axis={arrow.axis} data-side={arrow.side}>
        <path d={`M${middle.x},${y}H${tip - way * 11}`} {...line} />
        <path d={`M${tip},${y}l${-way * 12},-6v12z`} />
        <text x={tip + way * 5} y={y - 8} text-anchor={way === 1 ? 'end' : 'start'} font-weight="600">
          {label}
        </text>
      </g>
    );
  }
  const x = middle.x - at * apart;
  const tip = middle.y + way * 76;
  return (
    <g data-axis={arrow.axis} data-side={arrow.side}>
      <path d={`M${x},${middle.y}V${tip - way * 11}`} {...line} />
      <path d={`M${x},${tip}l-6,${-way * 12}h12z`} />
      <text
        x={at === 0 ? x + 9 : x - 9}
        y={tip + (way === 1 ? -2 : 10)}
        text-anchor={at === 0 ? 'start' : 'end'}
        font-weight="600"
      >
        {label}
      </text>
    </g>
  );
}

const lineOf = ({ kind }: PlanArrow) => ({
  fill: 'none',
  stroke: '#000',
  'stroke-width': kind === 'really' ? '1.6' : '2.4',
  ...(kind === 'really' ? { 'stroke-dasharray': '5 3' } : {}),
});

/** Needs both directions of the plane. */
function HomeCorner({ home }: { readonly home: Plan['home'] }) {
  const across = home.find((side) => side === 'left' || side === 'right');
  const along = home.find((side) => side === 'front' || side === 'back');
  if (across === undefined || along === undefined) return null;
  const [x, inX] = across === 'left' ? [table.left, corner] : [table.right, -corner];
  const [y, inY] = along === 'back' ? [table.top, corner] : [table.bottom, -corner];
  const textX = across === 'left' ? x + 9 : x - 9;
  return (
    <g data-home={`${across} ${along}`}>
      <path d={`M${x},${y}h${inX}L${x},${y + inY}z`} />
      <text
        x={textX + inX}
        y={along === 'back' ? y + 16 : y - 8}
        text-anchor={across === 'left' ? 'start' : 'end'}
      >
        home
      </text>
    </g>
  );
}

/** Up and down, seen from the side, each axis with an arrow of its own. */
function Upright({ arrows, home }: { readonly arrows: readonly PlanArrow[]; readonly home: Plan['home'] }) {
  if (arrows.length === 0) return null;
  const edge = home.find((side) => side === 'top' || side === 'bottom');
  return (
    <g>
      <text x={upright} y={table.top - 8} text-anchor="middle" fill="#555">
        top
      </text>
      <text x={upright} y={table.bottom + 17} text-anchor="middle" fill="#555">
        bottom
      </text>
      <path
        d={`M${upright - 40},${table.top}h80M${upright - 40},${table.bottom}h80`}
        stroke="#000"
        stroke-width="0.8"
      />
      {edge === undefined ? null : (
        <g data-home={edge}>
          <rect x={upright - 40} y={edge === 'top' ? table.top : table.bottom - 7} width="80" height="7" />
          <text x={upright + 46} y={edge === 'top' ? table.top + 10 : table.bottom}>
            home
          </text>
        </g>
      )}
      {arrows.map((arrow, i) => {
        const way = arrow.side === 'bottom' ? 1 : -1;
        const x = upright + (i - (arrows.length - 1) / 2) * 44;
        const tip = middle.y + way * 60;
        return (
          <g key={`${arrow.axis}${arrow.kind}`} data-axis={arrow.axis} data-side={arrow.side}>
            <path d={`M${x},${middle.y - way * 20}V${tip - way * 11}`} {...lineOf(arrow)} />
            <path d={`M${x},${tip}l-6,${-way * 12}h12z`} />
            <text
              x={x}
              y={middle.y - way * 20 + (way === 1 ? -7 : 16)}
              text-anchor="middle"
              font-weight="600"
            >
              {`${arrow.axis}+${arrow.kind === 'really' ? ' really' : ''}`}
            </text>
          </g>
        );
      })}
    </g>
  );
}
