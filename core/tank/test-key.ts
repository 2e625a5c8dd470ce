import canonicalize from 'canonicalize';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { TankTest } from '../document/tests-field.ts';

/** A test by its record and everything that its result depends on, as 64 hex digits: with any other, the result is of another test. */
export const testKey = ({ record, reading, conditioning, setup }: TankTest): string =>
  bytesToHex(sha256(utf8ToBytes(canonicalize({ hash: record.hash, reading, conditioning, setup }) as string)));
