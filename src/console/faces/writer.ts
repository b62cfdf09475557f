/**
 * Writes text to a stream that may be gone at any time (a closed pipe, a dead terminal): nothing is thrown, and `broken`
 * is called once.
 */
export function writerTo(output: NodeJS.WritableStream, broken: () => void): (text: string) => void {
  let isBroken = false;
  const fail = () => {
    if (isBroken) return;
    isBroken = true;
    broken();
  };
  output.on('error', fail);
  return (text) => {
    if (isBroken) return;
    try {
      output.write(text);
    } catch {
      fail();
    }
  };
}
