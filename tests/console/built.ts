import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** The program as a person runs it. `npm test` builds it first. */
export const program = at('bin/tellwire.js');
export const demoProgram = at('dist/console/demo.js');
const isBuilt = existsSync(demoProgram) && existsSync(at('dist/bundle/main.js'));

/** Tests that run the built program, with whatever else they need. Skipped for all to see, failed in CI. */
export function describeBuilt(
  name: string,
  needs: readonly (readonly [what: string, has: boolean])[],
  tests: () => void,
): void {
  const lacking = [['a build, npm run build', isBuilt] as const, ...needs]
    .filter(([, has]) => !has)
    .map(([what]) => what);
  const why = lacking.length === 0 ? '' : ` (needs ${lacking.join(' and ')}, which is not here)`;
  describe.skipIf(lacking.length > 0)(`${name}${why}`, tests);
  if (lacking.length > 0 && process.env['CI'] === 'true')
    it(`${name} ran`, () => {
      expect(lacking, 'must be here where CI=true').toEqual([]);
    });
}
