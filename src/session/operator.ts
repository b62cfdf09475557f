import type { Answer, Ask, EndedBy } from '../model/ask.ts';
import type { CauseFacts } from '../model/cause-facts.ts';
import type { Subject } from '../model/machine.ts';
import type { Danger } from '../model/procedure.ts';
import type { Active, Level, Reading } from '../model/reading.ts';
import type { Millis } from '../model/units.ts';
import type { Verdict } from '../model/verdict.ts';

/** What a session shows, whichever face shows it. One stream of events serves the screen, the lines and the JSON face. */
export type FaceEvent =
  | ShownAsk
  | {
      readonly kind: 'ended';
      readonly id: number;
      readonly by: EndedBy;
      readonly answer?: Answer;
      readonly value?: number;
    }
  | Heard
  | ToldDanger
  | { readonly kind: 'verdict'; readonly verdict: Verdict; readonly restored: boolean }
  | {
      readonly kind: 'cause';
      readonly subject: Subject;
      readonly cause: CauseFacts;
      readonly restored: boolean;
    }
  | {
      readonly kind: 'refused';
      readonly id: number | undefined;
      readonly found: string;
      readonly allowed: readonly string[];
    }
  /** Something a person should know that is neither ask nor finding: the stream broke off, came back, is awaited. */
  | { readonly kind: 'notice'; readonly topic: NoticeTopic; readonly text: string }
  /** How a line of the person's own goes, step by step, in words. */
  | { readonly kind: 'own-line'; readonly step: OwnLineStep; readonly lines: readonly string[] }
  /** Every reading, for a face that shows live inputs. */
  | { readonly kind: 'reading'; readonly reading: Reading }
  | {
      readonly kind: 'finished';
      readonly session: string;
      readonly report: string;
      readonly exit: 0 | 1 | 2;
    };

/** Refused: she may type another. Shown back: she agrees to it, or not. Over: sent or dropped, the prompt closes. */
export type OwnLineStep = 'refused' | 'shown-back' | 'over';

export type NoticeTopic =
  | 'awaiting-stream'
  | 'stream-lost'
  | 'stream-back'
  | 'something-out'
  | 'nothing-heard'
  | 'nothing-understood'
  | 'written';

export interface ShownAsk {
  readonly kind: 'ask';
  readonly id: number;
  readonly again?: number;
  readonly ask: Ask;
  readonly text: string;
  readonly cautions: readonly string[];
  readonly answers: readonly Answer[];
  /** A line of her own may be sent while this is open. */
  readonly ownLine?: true;
}

/** Something goes wrong while an axis moves: to be shown and sounded at once. The tool cannot stop it. */
export interface ToldDanger extends Danger {
  readonly kind: 'danger';
  /** The ask that was open. */
  readonly id: number;
  readonly text: string;
}

/** One input changed while an ask was open. */
export interface Heard {
  readonly kind: 'heard';
  readonly arrived: Millis;
  readonly input: string;
  readonly level: Level;
  readonly active: Active;
}

/** What a person, or a program in her place, says. `wrong` is a line that could not be read as an answer. */
export type Reply =
  | { readonly kind: 'answer'; readonly id: number; readonly answer: string; readonly value?: number }
  | { readonly kind: 'wrong'; readonly found: string }
  /** A line of her own, typed at the prompt for it; then whether she agrees to its bytes. Where none may be sent no face offers it. */
  | { readonly kind: 'own-line'; readonly text: string }
  | { readonly kind: 'own-line-settled'; readonly agreed: boolean }
  | { readonly kind: 'gone' };

/** A face shows events and hands back replies; it decides nothing. */
export interface Face {
  start(take: (reply: Reply) => void): void;
  show(event: FaceEvent): void;
  close(): void | Promise<void>;
}
