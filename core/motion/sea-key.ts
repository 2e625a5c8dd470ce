import canonicalize from 'canonicalize';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { SeaDeployment } from '../document/sea-tests-field.ts';

/** A deployment by its records and everything that its result depends on, as 64 hex digits. */
export const seaKey = ({ record, reading, second, setup }: Omit<SeaDeployment, 'result'>): string => {
  const other = second && {
    hash: second.record.hash,
    reading: second.reading,
    late: second.late,
    lateAtEnd: second.lateAtEnd,
  };
  return bytesToHex(sha256(utf8ToBytes(canonicalize({ hash: record.hash, reading, other, setup }) as string)));
};
