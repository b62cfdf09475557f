import type { FaceEvent, Reply, ShownAsk } from '../../session/operator.ts';

/** Typed at an ask, it opens the prompt for a line of the person's own. */
export const ownLineWord = 'line';
/** The same as a key. */
export const ownLineKey = 't';

/**
 * The prompt for a line of the person's own, at any face that has a keyboard: opened on purpose, then one line, then her yes to the bytes
 * that were shown back. While it is open nothing typed is an answer to an ask.
 */
export class OwnLinePrompt {
  private step: 'closed' | 'typing' | 'agreeing' = 'closed';

  get isOpen(): boolean {
    return this.step !== 'closed';
  }

  /** Opens it where the ask lets a line of her own be sent; whether it is open now. */
  open(ask: ShownAsk | undefined): boolean {
    if (ask?.ownLine) this.step = 'typing';
    return this.isOpen;
  }

  /** What an entered line says; undefined where it only closes the prompt. */
  entered(text: string): Reply | undefined {
    const agreed = this.step === 'agreeing';
    this.step = 'closed';
    if (agreed) return { kind: 'own-line-settled', agreed: text.trim().toLowerCase() === 'yes' };
    return text.trim() === '' ? undefined : { kind: 'own-line', text };
  }

  /** Follows what the session makes of it. */
  follow(event: FaceEvent): void {
    if (event.kind === 'own-line')
      this.step = { refused: 'typing', 'shown-back': 'agreeing', over: 'closed' }[
        event.step
      ] as typeof this.step;
    else if (event.kind === 'ended' || event.kind === 'danger') this.step = 'closed';
  }
}
