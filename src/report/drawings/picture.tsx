import { repeatText } from '../../words/motion/repeat-words.ts';
import { sketchText } from '../../words/motion/sketch-words.ts';
import { trackWay } from '../../words/motion/track-words.ts';
import type { Picture } from '../document.ts';
import { EnvelopeView } from './envelope/envelope-view.tsx';
import { TrackView } from './motion/track-view.tsx';
import { RepeatView } from './repeat/repeat-view.tsx';
import { planOf } from './sketch/plan.ts';
import { SketchView } from './sketch/sketch-view.tsx';

/** Each picture as SVG. */
export function PictureView({ picture, id }: { readonly picture: Picture; readonly id: string }) {
  switch (picture.of) {
    case 'track':
    case 'close-up':
      return <TrackView track={picture.track} id={id} />;
    case 'envelope':
      return <EnvelopeView facts={picture.facts} id={id} />;
    case 'repeat':
      return <RepeatView facts={picture.facts} id={id} />;
    case 'sketch':
      return <SketchView sketch={picture.sketch} id={id} />;
  }
}

/** The same picture in words, for formats that draw nothing; undefined where what stands beside it says it already. */
export function pictureText(picture: Picture): string | undefined {
  switch (picture.of) {
    case 'track':
      return trackWay(picture.track);
    case 'close-up':
    case 'envelope':
      return undefined;
    case 'repeat':
      return repeatText(picture.facts);
    case 'sketch':
      return sketchText(planOf(picture.sketch));
  }
}
