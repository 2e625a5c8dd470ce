import type { VerifyReading } from '../../../core/host/host-schema.ts';
import { refusal } from '../../../core/refusal.ts';
import type { VerifyReport } from './verify-note.ts';

/** What the window shows of a report that a job gave. Refuses the result of another kind of job. */
export function verifyReading(bytes: Uint8Array): VerifyReading {
  const report = reportIn(bytes);
  const {
    documentHash,
    madeBy,
    verifiedBy,
    sameBytes,
    tolerance,
    pages,
    pageDifferences,
    otherDifferences,
    roundedOtherwise,
  } = report;
  const signatures = report.signatures.map(({ signer, issuer, role, claimed, stamp, faults, remarks }) => ({
    ...{ signer, issuer, role, claimed, stamp, faults: [...faults], remarks: [...remarks] },
  }));
  return {
    ...{ documentHash, madeBy, verifiedBy, sameBytes, tolerance, pages, signatures },
    pageDifferences: [...pageDifferences],
    roundedOtherwise: [...roundedOtherwise],
    otherDifferences: [...otherDifferences],
  };
}

function reportIn(bytes: Uint8Array): VerifyReport {
  const start = new TextEncoder().encode('{"schema":"stillplate-verify/1"');
  if (start.every((byte, i) => bytes[i] === byte)) return JSON.parse(new TextDecoder().decode(bytes)) as VerifyReport;
  throw refusal({ what: 'This job verified no note', mend: 'Ask for the result of the job that did.' });
}
