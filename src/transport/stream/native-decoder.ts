import type { GapWhy, Reading, StatusReading, UnreadableWhy } from '../../model/reading.ts';
import { type Millis, ms } from '../../model/units.ts';
import { declarations } from './declarations.ts';
import type { Decoder, Quick } from './decoder.ts';
import { readSentence } from './native-sentences.ts';
import { type Piece, pieceOf } from './quick-fields.ts';
import { QuickRun } from './quick-run.ts';
import { QuickShape } from './quick-shape.ts';
import { QuickStatus } from './quick-status.ts';
import { perItem, readingOfEdge, readingOfStatus, readingOfVolts, statusReading } from './reports.ts';
import type { Sentence } from './sentence.ts';
import { steps } from './steps.ts';

/** A declaration comes every 5 s: a report that waited longer for one waited in vain. */
const longestWait = ms(6000);
/** Longer ones are no sentences. Bytes. */
const longestLine = 240;
const LF = 0x0a;
/** Reports held at most, whatever the stream does: 6 s at more than a thousand a second. */
const mostHeld = 8192;

type Report = Exclude<Sentence, { kind: 'declaration' | 'more-names' }>;
/** What waits to be read or passed on, in order of arrival. */
type Held = { readonly arrived: Millis } & ({ readonly report: Report } | { readonly why: UnreadableWhy });

/** Decodes native status sentences. What is decided depends on the lines and their arrival alone, so that a capture replays alike. */
export function nativeDecoder(): Decoder {
  const book = declarations();
  const clock = steps();
  const status = new QuickStatus();
  const held: Held[] = [];
  const line = pieceOf(longestLine);
  let segment = 0;
  let heard = false;

  const gap = (arrived: Millis, why: GapWhy): Reading => ({ kind: 'gap', arrived, segment: ++segment, why });

  /** A new declaration comes into force with the first report that agrees with it. */
  const announce = (arrived: Millis, changed: boolean): readonly Reading[] => {
    const declared = book.current;
    if (declared === undefined) return [];
    const before = changed ? [gap(arrived, 'declaration-changed')] : [];
    const { units, axes, inputs } = declared;
    return [...before, { kind: 'declared', arrived, segment, units, axes, inputs }];
  };

  const read = (report: Report, arrived: Millis): readonly Reading[] => {
    const declared = book.current;
    if (declared === undefined) return [unreadable(arrived, 'before-declaration')];
    const scene = { arrived, declared, clock, segment };
    const found =
      report.kind === 'status'
        ? readingOfStatus(report, scene)
        : report.kind === 'edge'
          ? readingOfEdge(report, scene)
          : readingOfVolts(report, scene);
    if ('why' in found) return [unreadable(arrived, found.why)];
    if (!found.restarted) return [found.reading];
    const before = gap(arrived, 'controller-restarted');
    return [before, { ...found.reading, segment }];
  };

  /** Reads what is held as far as it can be read now. */
  const drain = (): readonly Reading[] => {
    const out: Reading[] = [];
    while (held.length > 0) {
      // An edge or voltages count no inputs: where a declaration is in question, the first status behind them answers it.
      const index = held.findIndex((each) => 'report' in each && each.report.kind === 'status');
      const entry = held[index];
      if (entry !== undefined && 'report' in entry && entry.report.kind === 'status') {
        const settled = book.settle(entry.report);
        if (settled === 'waits') break;
        if (settled === 'wrong-count') {
          held[index] = { arrived: entry.arrived, why: 'wrong-field-count' };
          continue;
        }
        if (settled === 'first' || settled === 'changed')
          out.push(...announce(held[0]?.arrived ?? entry.arrived, settled === 'changed'));
      } else if (book.current === undefined && held.some((each) => 'report' in each)) break;
      const upTo = index === -1 ? held.length : index + 1;
      for (const each of held.splice(0, upTo))
        out.push(...('why' in each ? [unreadable(each.arrived, each.why)] : read(each.report, each.arrived)));
    }
    return out;
  };

  const giveUp = (count: number): readonly Reading[] =>
    held
      .splice(0, count)
      .map(({ arrived, ...each }) => unreadable(arrived, 'why' in each ? each.why : 'before-declaration'));

  /** Gives up what has waited too long, or is too much. */
  const expire = (now: Millis): readonly Reading[] => {
    const fresh = held.findIndex(({ arrived }) => now - arrived <= longestWait);
    const tooOld = fresh === -1 ? held.length : fresh;
    return giveUp(held.length < mostHeld ? tooOld : Math.max(tooOld, mostHeld / 4));
  };

  /** A sound status of the declaration in force, with nothing waiting before it: nearly every line. */
  const quickly = (arrived: Millis, piece: Piece, from: number): StatusReading | undefined => {
    const declared = book.current;
    if (declared === undefined || held.length > 0 || !status.read(piece, from)) return undefined;
    const positions = perItem(status.positions, declared.axes.length);
    if (positions === undefined || status.levels.length !== declared.inputs.length) return undefined;
    const lost = clock.next(status.seq, status.ms, arrived);
    if (lost < 0) return undefined;
    heard = true;
    end = status.end;
    return statusReading(status, positions, declared, arrived, clock.now, segment, lost);
  };

  const shape = new QuickShape();
  /** The declaration that the shape agrees with. */
  let shaped: ReturnType<typeof declarations>['current'];
  const quickRun = new QuickRun(shape, clock);
  /** Where the line ended that was read last. */
  let end = 0;

  const run: Quick['run'] = (head, piece, line, to, paces) => {
    if (shaped === undefined || shaped !== book.current || held.length > 0) return undefined;
    if (!quickRun.take(head, piece, line, to, paces)) return undefined;
    end = quickRun.end;
    const { at, lost, further, arrived } = quickRun;
    return { segment, at, lost, further, arrived, lastAt: clock.now };
  };

  const asPiece = (text: string): Piece => {
    line.bytes.write(`${text}\n`, 'latin1');
    // An LF within a line is written with an escape, and read as no end.
    if (line.bytes.indexOf(LF) < text.length) line.bytes[0] = LF;
    return line;
  };

  return {
    quick: {
      status: quickly,
      learn(piece, from) {
        shaped = book.current;
        shape.learn(piece, from, status.star, status.inputsAt, status.inputsEnd);
      },
      run,
      get end() {
        return end;
      },
    },
    decode({ arrived, text, cut }) {
      const soon = cut === 0 && text.length < longestLine ? quickly(arrived, asPiece(text), 0) : undefined;
      if (soon) return [soon];
      const expired = expire(arrived);
      const found = readSentence(text, cut);
      if (found.kind === 'unreadable') held.push({ arrived, why: found.why });
      else {
        heard = true;
        if (found.kind === 'declaration') book.declare(found);
        else if (found.kind !== 'more-names') held.push({ arrived, report: found });
        else if (!book.extend(found)) held.push({ arrived, why: 'wrong-number' });
      }
      return [...expired, ...drain()];
    },
    gap(arrived, why) {
      const given = giveUp(held.length);
      book.reset();
      clock.reset();
      heard = false;
      return [...given, gap(arrived, why)];
    },
    get heard() {
      return heard;
    },
    get declared() {
      return book.current !== undefined;
    },
  };
}

const unreadable = (arrived: Millis, why: UnreadableWhy): Reading => ({ kind: 'unreadable', arrived, why });
