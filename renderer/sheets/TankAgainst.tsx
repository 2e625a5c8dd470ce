import { useState } from 'react';
import type { TankTest } from '../../core/document/tests-field.ts';
import { SectionView } from '../parts/Blocks.tsx';
import { useOfTest, useRecordHead } from '../state/use-record.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { Answer } from './Answer.tsx';

const t = texts.tank;

/** A reduced test beside theory for this plate, and against another test. */
export function TankAgainst({ test, others }: { test: TankTest; others: readonly TankTest[] }) {
  const [other, setOther] = useState<string | null>(null);
  const [beside, setBeside] = useState(false);
  const against = others.find(({ id }) => id === other);
  return (
    <>
      <div className="tank-tests" role="group" aria-label={t.compare}>
        <button type="button" aria-pressed={beside} onClick={() => setBeside(!beside)}>
          {t.besideTheory}
        </button>
        {others.map(({ id, title }) => (
          <button key={id} type="button" aria-pressed={id === other} onClick={() => setOther(id === other ? null : id)}>
            {t.against(title)}
          </button>
        ))}
      </div>
      {beside && <Theory test={test} />}
      {against && <Against key={against.id} test={test} other={against} />}
    </>
  );
}

function Against({ test, other }: { test: TankTest; other: TankTest }) {
  const head = useRecordHead(other);
  const { result: _result, ...asked } = other;
  const compared = useOfTest('compare', test, head.value !== null, { other: asked });
  const answer = head.refusal ? { value: null, refusal: head.refusal } : compared;
  return (
    <Answer answer={answer} waiting={t.reducing}>
      {(section) => <SectionView section={section} level={2} />}
    </Answer>
  );
}

function Theory({ test }: { test: TankTest }) {
  const raw = useWorkbench(({ document }) => document?.raw);
  const option = useWorkbench(({ document }) => document?.option ?? null);
  const predicted = useOfTest('predict', test, raw !== undefined, { raw, option });
  return (
    <Answer answer={predicted} waiting={t.predicting}>
      {(section) => <SectionView section={section} level={2} />}
    </Answer>
  );
}
