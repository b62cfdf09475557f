/** What stands where a name was left out of a session before it was handed on. */
export const leftOut = 'left out';
