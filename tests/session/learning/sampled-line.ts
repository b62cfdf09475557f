/**
 * What a receiver at one rate makes of bytes sent at another. A character is a start bit (low), eight bits, the lowest first, and
 * a stop bit (high); between characters the line is high. The receiver waits for a falling edge, looks half a bit later whether
 * the start bit is still there, and samples in the middle of each bit after it: the usual asynchronous receiver (8N1).
 */
export function sampledAt(sentAt: number, heardAt: number, bytes: Uint8Array): Uint8Array {
  /** The line at a time counted in bits of the sender. */
  const isHigh = (bits: number): boolean => {
    const at = Math.floor(bits);
    const byte = bytes[Math.floor(at / 10)];
    const bit = at % 10;
    if (byte === undefined || bit === 9) return true;
    return bit > 0 && ((byte >> (bit - 1)) & 1) === 1;
  };
  const bit = sentAt / heardAt;
  const end = bytes.length * 10;
  const heard: number[] = [];
  for (let t = 0; t < end; ) {
    if (isHigh(t)) {
      t = nextFall(t);
      continue;
    }
    if (isHigh(t + bit / 2)) {
      t += bit / 2;
      continue;
    }
    let byte = 0;
    for (let i = 0; i < 8; i++) if (isHigh(t + bit * (i + 1.5))) byte |= 1 << i;
    // A character without its stop bit is handed on none the less, as most drivers do.
    heard.push(byte);
    t += bit * 9.5;
    // Without a stop bit there is no falling edge until the line has been high again.
    while (t < end && !isHigh(t)) t = Math.floor(t) + 1;
  }
  return Uint8Array.from(heard);

  function nextFall(from: number): number {
    let at = Math.floor(from) + 1;
    while (at < end && isHigh(at)) at++;
    return at;
  }
}
