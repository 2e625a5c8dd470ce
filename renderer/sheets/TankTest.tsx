import { useState } from 'react';
import type { TankTest } from '../../core/document/tests-field.ts';
import { FigureView } from '../parts/FigureView.tsx';
import { SectionView } from '../parts/Blocks.tsx';
import { tankSketch } from '../../core/note/tank-sketch.ts';
import { addTankTest } from '../state/add-record.ts';
import { none } from '../state/none.ts';
import { said } from '../state/said.ts';
import { useSession } from '../state/session-context.ts';
import { useField } from '../state/use-field.ts';
import { useOfTest, useRecordHead } from '../state/use-record.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { Answer } from './Answer.tsx';
import { MissingRecord } from './MissingRecord.tsx';
import { RecordAcceptance } from './RecordAcceptance.tsx';
import { TankDelay } from './TankDelay.tsx';
import { TankAgainst } from './TankAgainst.tsx';
import { TankSettings } from './TankSettings.tsx';
import { TestUsed } from './TestUsed.tsx';
import './tank-test.css';

const t = texts.tank;

/** Records of a tank test: looked at, read, reduced to added mass and drag, accepted, and used in the design. */
export function TankTestSheet() {
  const session = useSession();
  const raw = useField(['tests', 'tank']).raw;
  const read = useWorkbench(({ document }) => document?.read?.tests?.tank ?? none);
  const [chosen, setChosen] = useState<string | null>(null);
  const all = Array.isArray(raw) ? (raw as readonly { readonly id: string; readonly title: string }[]) : none;
  const index = Math.max(0, all.findIndex(({ id }) => id === chosen)); // prettier-ignore
  const add = () =>
    said(async () => {
      await addTankTest(session);
      setChosen(null);
    });
  return (
    <>
      <div className="tank-tests" role="group" aria-label={t.tests}>
        {all.map(({ id, title }, n) => (
          <button key={id} type="button" aria-pressed={n === index} onClick={() => setChosen(id)}>
            {String(title)}
          </button>
        ))}
        <button type="button" onClick={() => void add()}>
          {t.add}
        </button>
      </div>
      {all.length === 0 ? (
        <>
          <p>{t.empty}</p>
          <figure>
            <FigureView figure={tankSketch} width={520} />
            <figcaption>{tankSketch.caption}</figcaption>
          </figure>
        </>
      ) : (
        <TestView key={all[index]!.id} index={index} test={read[index] ?? null} others={read} />
      )}
      {all.length > 0 && <TestUsed tests={read} />}
    </>
  );
}

function TestView({ index, test, others }: { index: number; test: TankTest | null; others: readonly TankTest[] }) {
  if (!test)
    return (
      <>
        <p className="fault">{t.faults}</p>
        <TankSettings index={index} columns={none} />
      </>
    );
  return <ReadTest index={index} test={test} others={others} />;
}

function ReadTest({ index, test, others }: { index: number; test: TankTest; others: readonly TankTest[] }) {
  const head = useRecordHead(test);
  const look = useOfTest('look', test, head.value !== null);
  const reduced = useOfTest('reduce', test, look.value !== null);
  return (
    <>
      <p className="quiet">{t.record(test.record.name, test.record.hash, head.value?.rows ?? null)}</p>
      {head.refusal && (
        <MissingRecord path={['tests', 'tank', index, 'record']} name={test.record.name} why={head.refusal.what} />
      )}
      <TankSettings index={index} columns={head.value?.columns ?? none} />
      <TankDelay index={index} test={test} ready={look.value !== null} />
      <Answer answer={look} waiting={head.refusal ? null : t.reading}>
        {(section) => (
          <details open={test.result === undefined}>
            <summary>{section.title}</summary>
            <SectionView section={section} level={2} />
          </details>
        )}
      </Answer>
      <Answer answer={reduced} waiting={look.value ? t.reducing : null}>
        {({ section, accepted }) => (
          <>
            <RecordAcceptance of="tank" index={index} entry={test} accepted={accepted} words={t} />
            <SectionView section={section} level={2} />
          </>
        )}
      </Answer>
      {reduced.value && <TankAgainst test={test} others={others.filter(({ id }) => id !== test.id)} />}
    </>
  );
}
