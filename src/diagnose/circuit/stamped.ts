import type { Element } from './network.ts';

/** What stands in the equations: elements between held nodes, switches already resolved to a resistance. */
export type Stamped = Exclude<Element, { readonly kind: 'switch' | 'capacitor' }>;
