import type { StateStudied, WiringAsStudied } from '../../../model/wiring-study.ts';
import { wiringWords } from '../../../words/wiring/circuit-words.ts';
import { schematicText } from '../../../words/wiring/schematic-words.ts';
import { stateWords } from '../../../words/wiring/study-words.ts';
import { FieldView } from './devices.tsx';
import { drawnOf, sheet } from './sheet.ts';
import { StageView } from './stages.tsx';
import { Frame } from './symbols.tsx';

/**
 * One input in one state as SVG, black on white: the contact stands as it does then, every dot carries the voltage computed for it
 * against 0 V of the controller.
 */
export function Schematic({
  wiring,
  state,
  id,
}: {
  wiring: WiringAsStudied;
  state: StateStudied;
  id: string;
}) {
  const drawn = drawnOf(wiring, state);
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${sheet.width} ${sheet.height}`}
      role="img"
      aria-labelledby={`${id}-t ${id}-d`}
      fill="#000"
    >
      <title id={`${id}-t`}>{`${wiringWords[wiring.name]}, ${stateWords[state.state]}`}</title>
      <desc id={`${id}-d`}>{schematicText(wiring, state)}</desc>
      <Frame x={12} y={20} width={sheet.terminal - 12} height={sheet.height - 34} title="controller" dashed />
      <StageView drawn={drawn} />
      <FieldView drawn={drawn} />
    </svg>
  );
}
