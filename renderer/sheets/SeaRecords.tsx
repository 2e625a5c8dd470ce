import { useState } from 'react';
import type { FieldPath } from '../../core/document/edit.ts';
import type { SeaDeployment } from '../../core/document/sea-tests-field.ts';
import { seaSketch } from '../../core/note/sea-sketch.ts';
import { SectionView } from '../parts/Blocks.tsx';
import { FigureView } from '../parts/FigureView.tsx';
import { addDeployment, addSecondLogger } from '../state/add-deployment.ts';
import { none } from '../state/none.ts';
import { said } from '../state/said.ts';
import { useSession } from '../state/session-context.ts';
import { useFilesOf, useOfDeployment } from '../state/use-deployment.ts';
import { useField } from '../state/use-field.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { Answer } from './Answer.tsx';
import { MissingRecord } from './MissingRecord.tsx';
import { RecordAcceptance } from './RecordAcceptance.tsx';
import { SeaSettings } from './SeaSettings.tsx';
import './tank-test.css';

const t = texts.sea;

/** Records of deployments in the sea: looked at, read, reduced to how still the plate was, accepted, and compared. */
export function SeaRecordsSheet() {
  const session = useSession();
  const raw = useField(['tests', 'sea']).raw;
  const read = useWorkbench(({ document }) => document?.read?.tests?.sea ?? none);
  const [chosen, setChosen] = useState<string | null>(null);
  const all = Array.isArray(raw) ? (raw as readonly { readonly id: string; readonly title: string }[]) : none;
  const index = Math.max(0, all.findIndex(({ id }) => id === chosen)); // prettier-ignore
  const add = () =>
    said(async () => {
      await addDeployment(session);
      setChosen(null);
    });
  const deployment = read[index];
  return (
    <>
      <div className="tank-tests" role="group" aria-label={t.deployments}>
        {all.map(({ id, title }, n) => (
          <button key={id} type="button" aria-pressed={n === index} onClick={() => setChosen(id)}>
            {String(title)}
          </button>
        ))}
        <button type="button" onClick={() => void add()}>
          {t.add}
        </button>
      </div>
      {all.length === 0 && (
        <>
          <p>{t.empty}</p>
          <figure>
            <FigureView figure={seaSketch} width={520} />
            <figcaption>{seaSketch.caption}</figcaption>
          </figure>
        </>
      )}
      {all.length > 0 && !deployment && (
        <>
          <p className="fault">{texts.tank.faults}</p>
          <SeaSettings index={index} columns={none} other={none} />
        </>
      )}
      {deployment && <DeploymentView key={deployment.id} index={index} deployment={deployment} all={read} />}
    </>
  );
}

function DeploymentView({ index, deployment, all }: { index: number; deployment: SeaDeployment; all: readonly SeaDeployment[] }) {
  const session = useSession();
  const files = useFilesOf(deployment);
  const look = useOfDeployment('lookSea', deployment, files.ready);
  const reduced = useOfDeployment('reduceSea', deployment, look.value !== null);
  const { record, second } = deployment;
  const at = (...rest: string[]): FieldPath => ['tests', 'sea', index, ...rest];
  return (
    <>
      <p className="quiet">{texts.tank.record(record.name, record.hash, files.first.value?.rows ?? null)}</p>
      {second && <p className="quiet">{texts.tank.record(second.record.name, second.record.hash, files.second?.value?.rows ?? null)}</p>}
      {files.first.refusal && <MissingRecord path={at('record')} name={record.name} />}
      {second && files.second?.refusal && <MissingRecord path={at('second', 'record')} name={second.record.name} />}
      <div className="tank-tests">
        {second ? (
          <button type="button" className="plain small" onClick={() => void session.edit({ kind: 'clearField', option: null, path: at('second') })}>
            {t.removeSecond}
          </button>
        ) : (
          <button type="button" onClick={() => void said(() => addSecondLogger(session, index))}>
            {t.addSecond}
          </button>
        )}
      </div>
      <SeaSettings index={index} columns={files.first.value?.columns ?? none} other={second ? (files.second?.value?.columns ?? none) : null} />
      <Answer answer={look} waiting={files.refusal ? null : texts.tank.reading}>
        {(sections) =>
          sections.map((section) => (
            <details key={section.title} open={deployment.result === undefined}>
              <summary>{section.title}</summary>
              <SectionView section={section} level={2} />
            </details>
          ))
        }
      </Answer>
      <Answer answer={reduced} waiting={look.value ? t.reducing : null}>
        {({ section, accepted }) => (
          <>
            <RecordAcceptance of="sea" index={index} entry={deployment} accepted={accepted} words={t} />
            <SectionView section={section} level={2} />
          </>
        )}
      </Answer>
      {reduced.value && <Comparison deployment={deployment} others={all.filter(({ id }) => id !== deployment.id)} />}
    </>
  );
} // prettier-ignore

function Comparison({ deployment, others }: { deployment: SeaDeployment; others: readonly SeaDeployment[] }) {
  const [other, setOther] = useState<string | null>(null);
  const against = others.find(({ id }) => id === other);
  return (
    <>
      <div className="tank-tests" role="group" aria-label={texts.tank.compare}>
        {others.map(({ id, title }) => (
          <button key={id} type="button" aria-pressed={id === other} onClick={() => setOther(id === other ? null : id)}>
            {texts.tank.against(title)}
          </button>
        ))}
      </div>
      {against && <Against key={against.id} deployment={deployment} other={against} />}
    </>
  );
}

function Against({ deployment, other }: { deployment: SeaDeployment; other: SeaDeployment }) {
  const files = useFilesOf(other);
  const { result: _result, ...asked } = other;
  const compared = useOfDeployment('compareSea', deployment, files.ready, { other: asked });
  const answer = files.refusal ? { value: null, refusal: files.refusal } : compared;
  return (
    <Answer answer={answer} waiting={t.reducing}>
      {(section) => <SectionView section={section} level={2} />}
    </Answer>
  );
}
