import type { DeclarationSentence, MoreNamesSentence, StatusSentence } from './sentence.ts';

export interface Declaration {
  readonly units: 'mm' | 'inch';
  readonly axes: readonly string[];
  readonly inputs: readonly string[];
  /** How many of the names the declaration itself carried; sentences of more names carried the rest. */
  readonly head: number;
}

/**
 * Puts a declaration together from its sentence and those of more names.
 *
 * Nothing in the sentences says that the last name has come. What says it is a status: it has one level an input. So a declaration
 * is in force from the first status whose count agrees with its names; a status with more levels than names waits for the missing
 * names, one with fewer is wrong. Repeated declarations change nothing; any other is a new one, put to the same test.
 */
export interface Declarations {
  declare(sentence: DeclarationSentence): void;
  /** False where the names contradict those they continue. */
  extend(sentence: MoreNamesSentence): boolean;
  /** Whether the inputs a status reports are those declared. `first` and `changed` are said once, when a declaration comes into force. */
  settle(status: StatusSentence): 'agrees' | 'first' | 'changed' | 'waits' | 'wrong-count';
  /** In force and unquestioned. */
  readonly current: Declaration | undefined;
  reset(): void;
}

export function declarations(): Declarations {
  let current: Declaration | undefined;
  let draft: Declaration | undefined;

  return {
    declare({ units, axes, names }) {
      const heard: Declaration = { units, axes, inputs: names, head: names.length };
      if (current !== undefined && sameHead(current, heard)) draft = undefined;
      else if (draft === undefined || !sameHead(draft, heard)) draft = heard;
    },
    extend({ first, names }) {
      const base = draft ?? current;
      // Names whose predecessors were lost say nothing; they come again with the next declaration.
      if (base === undefined || first > base.inputs.length) return true;
      if (sameNames(base.inputs.slice(first, first + names.length), names)) return true;
      const inputs = [...base.inputs.slice(0, first), ...names];
      if (first < base.head || new Set(inputs).size < inputs.length) return false;
      draft = { ...base, inputs };
      return true;
    },
    settle(status) {
      const reported = Math.max(status.levels.length, status.active.length);
      const agrees = ({ inputs }: Declaration) => reported === 0 || reported === inputs.length;
      if (draft === undefined) {
        if (current === undefined) return 'waits';
        return agrees(current) ? 'agrees' : 'wrong-count';
      }
      if (!agrees(draft)) {
        if (reported > draft.inputs.length) return 'waits';
        // More names than inputs: no further names can mend that. Where the old declaration still fits, the new one was damaged.
        if (current === undefined || !agrees(current)) return 'wrong-count';
        draft = undefined;
        return 'agrees';
      }
      const known = current;
      const heard = draft;
      draft = undefined;
      if (known !== undefined && sameHead(known, heard) && sameNames(known.inputs, heard.inputs))
        return 'agrees';
      current = heard;
      return known === undefined ? 'first' : 'changed';
    },
    get current() {
      return draft === undefined ? current : undefined;
    },
    reset() {
      current = draft = undefined;
    },
  };
}

const sameNames = (one: readonly string[], other: readonly string[]) =>
  one.length === other.length && one.every((name, i) => name === other[i]);

const sameHead = (one: Declaration, other: Declaration) =>
  one.units === other.units &&
  sameNames(one.axes, other.axes) &&
  sameNames(one.inputs.slice(0, one.head), other.inputs.slice(0, other.head));
