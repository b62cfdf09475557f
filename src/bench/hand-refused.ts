/** Something no hand can do on this machine: what was asked, and what could be. */
export class HandRefused extends Error {
  readonly allowed: readonly string[];

  constructor(found: string, allowed: readonly string[]) {
    super(found);
    this.name = 'HandRefused';
    this.allowed = allowed;
  }
}
