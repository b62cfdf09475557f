import { visible } from '../model/visible.ts';
import { nativeBinding, type SerialBinding } from './serial-binding.ts';

/** A serial port of this computer; what its maker put into it is shown with control characters written out. */
export interface PortFact {
  readonly path: string;
  readonly maker: string | undefined;
  readonly serialNumber: string | undefined;
  /** USB vendor and product, hex, `1a86:7523`. */
  readonly usb: string | undefined;
}

/** The serial ports of this computer, by name. */
export async function listPorts(binding?: SerialBinding): Promise<readonly PortFact[]> {
  const from = binding ?? (await nativeBinding());
  const ports = await from.list();
  return ports
    .map(({ path, manufacturer, serialNumber, vendorId, productId }) => ({
      path: visible(path),
      maker: manufacturer === undefined ? undefined : visible(manufacturer),
      serialNumber: serialNumber === undefined ? undefined : visible(serialNumber),
      usb:
        vendorId === undefined || productId === undefined ? undefined : visible(`${vendorId}:${productId}`),
    }))
    .sort((one, other) => (one.path < other.path ? -1 : 1));
}
