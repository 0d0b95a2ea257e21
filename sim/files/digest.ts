/** The digest of a record: shows damage and careless edits. It is no signature: who digests anew is not caught by it. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { canonical } from './canonical.js';

/** SHA-256 (FIPS 180-4) of a text in UTF-8, 64 hexadecimal digits. */
export const sha256Hex = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/**
 * SHA-256 over the canonical JSON of a record without its key `digest`.
 * @throws TypeError when the record holds what is no JSON (NaN, an infinity).
 */
export function digestOf(record: object): string {
  const { digest: _, ...rest } = record as { digest?: unknown };
  return sha256Hex(canonical(rest));
}
