import type { StateStudied, WiringAsStudied } from '../../../model/wiring-study.ts';
import { wiringWords } from '../../../words/wiring/circuit-words.ts';
import { schematicText } from '../../../words/wiring/schematic-words.ts';
import { stateWords } from '../../../words/wiring/study-words.ts';
import { Figure } from '../figure.tsx';
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
    <Figure
      id={id}
      width={sheet.width}
      height={sheet.height}
      title={`${wiringWords[wiring.name]}, ${stateWords[state.state]}`}
      says={schematicText(wiring, state)}
    >
      <Frame x={12} y={20} width={sheet.terminal - 12} height={sheet.height - 34} title="controller" dashed />
      <StageView drawn={drawn} />
      <FieldView drawn={drawn} />
    </Figure>
  );
}
