import { describe, expect, it } from 'vitest';
import type { Network } from '../../src/diagnose/circuit/network.ts';
import { agreement } from './agreement.ts';
import { allNetworks } from './networks.ts';
import { hasNgspice } from './run.ts';

/** Without the second solver nothing is compared: that may pass at a desk, never where the build is judged. */
if (!hasNgspice && process.env['CI'] === 'true')
  throw new Error('ngspice is missing: install it to compare the solvers.');

describe.skipIf(!hasNgspice)('our solver and ngspice on the same netlists', () => {
  it('agree node by node over every circuit, every fault and every state', { timeout: 900_000 }, () => {
    const { networks, nodes, floating, apart } = agreement(allNetworks());
    console.log(
      `ngspice: ${networks} networks, ${nodes} nodes, ${floating} of them floating, ${apart.length} apart`,
    );
    expect(apart).toEqual([]);
    expect(nodes).toBeGreaterThan(20_000);
  });

  it('are seen to differ when one resistance is a hundredth off', { timeout: 180_000 }, () => {
    const some = allNetworks()
      .filter(({ named }) => named.startsWith('contact-into-fed-optocoupler'))
      .slice(0, 60);
    const bent = (network: Network): Network =>
      network.map((each) =>
        each.name === 'series' && each.kind === 'resistor' ? { ...each, ohms: each.ohms * 1.01 } : each,
      );
    expect(agreement(some).apart).toEqual([]);
    expect(agreement(some, bent).apart.length).toBeGreaterThan(0);
  });
});
