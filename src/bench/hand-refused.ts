/** Something no hand can do on this machine: what was asked, and what could be. */
export class HandRefused extends Error {
  readonly allowed: readonly string[];

  constructor(found: string, allowed: readonly string[]) {
    super(found);
    this.name = 'HandRefused';
    this.allowed = allowed;
  }
}

/** Whether what was to be done cannot be done here. */
export function isRefused(act: () => void): boolean {
  try {
    act();
    return false;
  } catch (cause) {
    if (cause instanceof HandRefused) return true;
    throw cause;
  }
}
