/** What a person has done and what goes on around the input while it is looked at. */
export interface State {
  readonly actuation: Actuation;
  readonly plug: 'in' | 'out at controller' | 'out at switch';
  /** A wire link between the two terminals that the closed contact would join. */
  readonly link: 'none' | 'at controller' | 'at switch';
  readonly handling: 'left alone' | 'tugged' | 'cable flexed';
  readonly running: 'nothing' | 'drives' | 'spindle' | 'axis';
  /** What the switch of the neighbouring input does meanwhile. */
  readonly neighbour: 'rest' | 'pressed';
}

/** `let go` is after a press; `tapped` is a press of a twentieth of a second. */
export type Actuation = 'rest' | 'pressed by hand' | 'pressed by machine' | 'let go' | 'tapped';

export const atRest: State = {
  actuation: 'rest',
  plug: 'in',
  link: 'none',
  handling: 'left alone',
  running: 'nothing',
  neighbour: 'rest',
};

export const state = (change: Partial<State>): State => ({ ...atRest, ...change });

/** ms. */
export const tapLasts = 50;

/** The states every wiring is looked at in. */
export const looks = {
  rest: atRest,
  pressed: state({ actuation: 'pressed by hand' }),
  'pressed by machine': state({ actuation: 'pressed by machine' }),
  'let go': state({ actuation: 'let go' }),
  'unplugged at controller': state({ plug: 'out at controller' }),
  unplugged: state({ plug: 'out at switch' }),
  'linked at controller': state({ plug: 'out at controller', link: 'at controller' }),
  'linked at switch': state({ plug: 'out at switch', link: 'at switch' }),
} as const satisfies Record<string, State>;
