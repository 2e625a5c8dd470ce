import canonicalize from 'canonicalize';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { RawDocument } from './read-document.ts';

/** SHA-256 of the document's canonical JSON (RFC 8785), view state left out, as 64 hex digits. */
export function documentHash(raw: RawDocument): string {
  const { view: _view, ...content } = raw;
  return bytesToHex(sha256(utf8ToBytes(canonicalize(content) as string)));
}
