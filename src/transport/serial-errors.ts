import { ToolError } from '../model/tool-error.ts';
import { visible } from '../model/visible.ts';

/** Why a port could not be opened, told by the binding's words: it gives no codes. */
export function serialError(path: string, baud: number, cause: unknown): ToolError {
  const said = cause instanceof Error ? cause.message : String(cause);
  const port = visible(path);
  if (/no such (file|device)|file not found|does not exist|ENOENT|ENXIO/i.test(said))
    return new ToolError(
      'port-missing',
      `There is no port ${port}.`,
      'Plug the cable in at both ends and switch the controller on, then run `tellwire ports` to see which ports there are.',
      cause,
    );
  // Windows says "Access denied" of a port that another program holds.
  if (/cannot lock|temporarily unavailable|busy|is locked|access (is )?denied/i.test(said))
    return new ToolError(
      'port-busy',
      `Another program has ${port} open.`,
      'Close whatever else talks to the controller, or let it talk through tellwire; `tellwire ports` lists the ports.',
      cause,
    );
  if (/permission denied|not permitted|EACCES|EPERM/i.test(said))
    return new ToolError(
      'port-not-permitted',
      `This user may not open ${port}.`,
      `See whose it is with \`ls -l ${port}\`; joining that group (often dialout or uucp) and logging in again lets you. \`tellwire ports\` lists the ports.`,
      cause,
    );
  return new ToolError(
    'port-failed',
    `${port} could not be opened at ${baud} baud: ${visible(said)}`,
    'Check that it is a serial port and that the baud rate is the controller’s; `tellwire ports` lists the ports.',
    cause,
  );
}
