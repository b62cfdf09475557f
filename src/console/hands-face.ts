import type { Answer, Ask } from '../model/ask.ts';
import type { Face, FaceEvent, Reply } from '../session/operator.ts';

/** Hands that do what is asked and say what they see. */
export interface HelpingHands {
  asked(id: number, ask: Ask): void;
  /** Something goes wrong while an axis moves. */
  danger?(): void;
  leave(): void;
}

const handsAreThere =
  'This is the simulated machine. Simulated hands do what is asked and say when it is done; you may answer too.';

/**
 * A face in front of which simulated hands stand: they do and answer every ask. Whoever sits at the face may answer too, only
 * "done" is left to the hands: they alone know when it is.
 */
export class HandsFace implements Face {
  private readonly face: Face | undefined;
  private readonly hands: HelpingHands;
  private take: (reply: Reply) => void = () => {};
  private byHands: number | undefined;

  constructor(
    face: Face | undefined,
    makeHands: (answer: (id: number, answer: Answer, value?: number) => void) => HelpingHands,
  ) {
    this.face = face;
    this.hands = makeHands((id, answer, value) =>
      this.take({ kind: 'answer', id, answer, ...(value !== undefined && { value }) }),
    );
  }

  start(take: (reply: Reply) => void): void {
    this.take = take;
    this.face?.show({ kind: 'notice', topic: 'awaiting-stream', text: handsAreThere });
    this.face?.start((reply) => {
      if (reply.kind === 'answer' && reply.answer === 'done' && reply.id === this.byHands) return;
      take(reply);
    });
  }

  show(event: FaceEvent): void {
    this.face?.show(event);
    if (event.kind === 'danger') this.hands.danger?.();
    if (event.kind !== 'ask') return;
    this.byHands = event.ask.action === 'hands-off' ? undefined : event.id;
    this.hands.asked(event.id, event.ask);
  }

  close(): void | Promise<void> {
    this.hands.leave();
    this.take = () => {};
    return this.face?.close();
  }
}
