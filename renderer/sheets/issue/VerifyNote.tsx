import { useState } from 'react';
import type { VerifyReading } from '../../../core/host/host-schema.ts';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { chooseFileBytes } from '../../parts/choose-file-bytes.ts';
import { said } from '../../state/said.ts';
import { useVerifyJob } from '../../state/use-verify-job.ts';
import { useWorkbench } from '../../state/workbench.ts';
import { texts } from '../../texts.ts';

const t = texts.issue;

/** Makes a note anew from the document inside it and says whether every printed number comes out again. */
export function VerifyNote() {
  const { job, name, done, doing, report, why, start, cancel } = useVerifyJob();
  const [compares, setCompares] = useState(false);
  const choose = async (): Promise<void> => {
    const file = await chooseFileBytes('.pdf');
    const raw = useWorkbench.getState().document?.raw;
    if (file) start(file, compares && raw ? JSON.stringify(raw) : null);
  };
  return (
    <FieldGroup title={t.verify}>
      <p className="quiet small">{t.verifyHelp}</p>
      <label className="tick">
        <input type="checkbox" checked={compares} onChange={(event) => setCompares(event.target.checked)} />
        {t.verifyAgainst}
      </label>
      <div className="acts">
        <button type="button" disabled={job !== null} onClick={() => void said(choose)}>
          {t.verifyChoose}
        </button>
        {job && (
          <>
            <progress value={done} aria-label={t.verifying(name)} />
            <span className="quiet small">{doing}</span>
            <button type="button" onClick={cancel}>
              {t.verifyCancel}
            </button>
          </>
        )}
      </div>
      {why && (
        <p className="fault" role="alert">
          {t.notVerified(name, why)}
        </p>
      )}
      {report && <Report name={name} report={report} />}
    </FieldGroup>
  );
}

function Report({ name, report }: { name: string; report: VerifyReading }) {
  const { pageDifferences, roundedOtherwise, otherDifferences, signatures } = report;
  const count = pageDifferences.length + otherDifferences.length;
  return (
    <section className="verified" aria-label={t.verified(name)}>
      <p role="status" className={count === 0 ? 'stamp' : 'stamp loud'}>
        {count === 0 ? t.comesOutAgain : t.differs(count)}
      </p>
      {count === 0 && (
        <p>{report.sameBytes ? t.sameFile(report.pages) : t.sameNumbers(report.pages, report.tolerance)}</p>
      )}
      <p className="quiet small">{t.madeAnew(name, report.madeBy, report.verifiedBy, report.documentHash)}</p>
      {pageDifferences.length > 0 && <Numbers differences={pageDifferences} />}
      {roundedOtherwise.length > 0 && (
        <>
          <p className="quiet small">{t.roundedOtherwise}</p>
          <Numbers differences={roundedOtherwise} />
        </>
      )}
      <ul>
        {otherDifferences.map((text) => (
          <li key={text} className="loud">
            {text}
          </li>
        ))}
      </ul>
      <h3>{t.signatures}</h3>
      {signatures.length === 0 && <p>{t.unsigned}</p>}
      <ul>
        {signatures.map(({ signer, issuer, role, claimed, stamp, faults, remarks }, i) => (
          <li key={i}>
            <strong className={faults.length === 0 ? '' : 'loud'}>
              {t.signature(signer, role, faults.length === 0)}
            </strong>{' '}
            {t.signatureBy(issuer, claimed)} {stamp && t.stampedBy(stamp.by, stamp.issuer, stamp.time)}
            {[...faults, ...remarks].map((text) => (
              <p key={text} className={faults.includes(text) ? 'loud' : 'quiet small'}>
                {text}
              </p>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}

function Numbers({ differences }: { differences: VerifyReading['pageDifferences'] }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">{t.page}</th>
          <th scope="col">{t.printed}</th>
          <th scope="col">{t.comesOut}</th>
        </tr>
      </thead>
      <tbody>
        {differences.map(({ page, printed, recomputed }, i) => (
          <tr key={i}>
            <td>{page}</td>
            <td>{printed}</td>
            <td>{recomputed}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
