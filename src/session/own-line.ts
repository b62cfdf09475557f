import type { Ask } from '../model/ask.ts';
import { type OwnLineFault, ownLineWords } from '../words/own-line-words.ts';
import type { Face, FaceEvent, OwnLineStep, Reply } from './operator.ts';

/** Asks that a person answers with her own control, which may be a line that she types. */
const byOwnControl: readonly Ask['action'][] = ['seek', 'home', 'move', 'clear'];
/** Characters: a line of a program is rarely longer (common practice, no source). */
export const longestOwnLine = 80;

export interface OwnLineParts {
  /** The end that the controller's lines have. */
  readonly ending: string;
  /** Writes while that ask is open; false where the port is not there. */
  readonly write: (text: string, ask: number) => boolean;
}

/**
 * A face at which the person may send her controller a line of her own. Each is shown back first, and is written only where she agrees to
 * these very bytes while the ask under which she typed them is still open and nothing goes wrong.
 */
export function withOwnLine(face: Face, { ending, write }: OwnLineParts): Face {
  let open: number | undefined;
  let shownBack: string | undefined;
  const tell = (step: OwnLineStep, ...lines: readonly string[]) =>
    face.show({ kind: 'own-line', step, lines });

  const typed = (text: string) => {
    const fault = faultIn(text);
    shownBack = undefined;
    if (open === undefined) tell('over', ownLineWords.notNow);
    else if (fault) tell('refused', ownLineWords.wrong(fault, longestOwnLine));
    else {
      shownBack = `${text}${ending}`;
      tell('shown-back', ownLineWords.shownBack(shownBack), ...ownLineWords.cautions, ownLineWords.question);
    }
  };

  const settled = (agreed: boolean) => {
    const bytes = shownBack;
    shownBack = undefined;
    if (open === undefined || bytes === undefined || !agreed) tell('over', ownLineWords.dropped);
    // What was written is stated by the session, as whatever is written is.
    else tell('over', ...(write(bytes, open) ? [] : [ownLineWords.portGone]));
  };

  /** The ask is over, or something goes wrong: this is no time to type. */
  const drop = () => {
    if (shownBack !== undefined) tell('over', ownLineWords.askOver);
    shownBack = undefined;
    open = undefined;
  };

  const show = (event: FaceEvent) => {
    if (event.kind === 'ask' || event.kind === 'ended' || event.kind === 'danger') drop();
    if (event.kind !== 'ask' || !byOwnControl.includes(event.ask.action)) return face.show(event);
    open = event.id;
    face.show({ ...event, ownLine: true });
  };

  return {
    start: (take) =>
      face.start((reply: Reply) => {
        if (reply.kind === 'own-line') typed(reply.text);
        else if (reply.kind === 'own-line-settled') settled(reply.agreed);
        else take(reply);
      }),
    show,
    close: () => face.close(),
  };
}

/** What keeps a text from being one plain line; undefined where nothing does. */
export function faultIn(text: string): OwnLineFault | undefined {
  if (text.trim() === '') return { kind: 'empty' };
  const place = [...text].findIndex((each) => !/^[\x20-\x7e]$/.test(each));
  const character = [...text][place];
  if (character !== undefined) return { kind: 'not-printable', character, place: place + 1 };
  return text.length > longestOwnLine ? { kind: 'too-long', length: text.length } : undefined;
}

/** As the lines of a stream's own request end; else CR LF, which nearly every controller takes. */
export const endingLike = (request: string | undefined): string =>
  /[\r\n]+$/.exec(request ?? '')?.[0] ?? '\r\n';
