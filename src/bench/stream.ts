/** The bench's only door to the house's stream: it writes native sentences as any controller would and knows one by its sum. */
export {
  writeDeclaration,
  writeEdge,
  writeRequest,
  writeStatus,
  writeVolts,
} from '../transport/stream/native-writer.ts';
