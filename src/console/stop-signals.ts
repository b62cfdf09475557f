import type { Face } from '../session/operator.ts';

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** The face, with the signals that end a program turned into "gone": the session is closed as after "stop" and can be resumed. */
export function endedBySignals(face: Face): Face {
  let off = () => {};
  return {
    start(take) {
      const gone = () => take({ kind: 'gone' });
      for (const signal of signals) process.on(signal, gone);
      off = () => {
        for (const signal of signals) process.removeListener(signal, gone);
      };
      face.start(take);
    },
    show: (event) => face.show(event),
    close() {
      off();
      off = () => {};
      return face.close();
    },
  };
}
