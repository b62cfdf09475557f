import type { EnvelopeFacts } from '../../../model/envelope-facts.ts';
import { visible } from '../../../model/visible.ts';
import { envelopeText } from '../../../words/motion/envelope-words.ts';
import { Figure } from '../figure.tsx';
import { endPlot } from './end-plot.ts';
import { EndView } from './end-view.tsx';
import { stripPlot } from './strip-plot.ts';
import { StripView } from './strip-view.tsx';

const width = 640;
/** As many lengths above an end as there can be, each in a row of this height. */
const spanRow = 25;

/** One axis as SVG: the whole of it in a strip, and below each end to a scale of its own. Black and grey, told apart by shape. */
export function EnvelopeView({ facts, id }: { readonly facts: EnvelopeFacts; readonly id: string }) {
  const strip = stripPlot(facts, 12, width - 12);
  const top = strip.bottom + 26;
  const base = top + 28 + 3 * spanRow;
  const hatch = `${id}-h`;
  const plots = {
    negative: endPlot(facts, 'negative', { from: 12, to: 304, base }),
    positive: endPlot(facts, 'positive', { from: 336, to: width - 12, base }),
  };
  const height = Math.max(plots.negative.bottom, plots.positive.bottom);
  return (
    <Figure
      id={id}
      width={width}
      height={height}
      fontSize="11"
      title={`Envelope of ${facts.axis}`}
      says={visible(envelopeText(facts))}
    >
      <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0,0v6" stroke="#000" stroke-width="1.6" />
      </pattern>
      <StripView plot={strip} hatch={hatch} />
      <EndView plot={plots.negative} end="negative" unit={facts.unit} hatch={hatch} top={top} />
      <EndView plot={plots.positive} end="positive" unit={facts.unit} hatch={hatch} top={top} />
    </Figure>
  );
}
