import { describe } from 'vitest';
import { neverFalselyProved } from './never-falsely-proved.ts';

describe('a dangerous fault of a normally open switch that hands or plugs can show', () => {
  neverFalselyProved('normally open');
});
