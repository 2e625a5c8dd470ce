import { delayWayWords } from '../../core/note/delay-section.ts';
import type { TankTest } from '../../core/document/tests-field.ts';
import type { FieldPath } from '../../core/document/edit.ts';
import { SectionView } from '../parts/Blocks.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { QuantityField } from '../parts/QuantityField.tsx';
import { chosenRecord } from '../state/add-record.ts';
import { said } from '../state/said.ts';
import { useSession } from '../state/session-context.ts';
import { useOfTest, useRecordHead } from '../state/use-record.ts';
import { texts } from '../texts.ts';
import { Answer } from './Answer.tsx';

const t = texts.tank;

/** From what the force's delay is found, what each way gives, and a button that takes it. */
export function TankDelay({ index, test, ready }: { index: number; test: TankTest; ready: boolean }) {
  const session = useSession();
  const at = (...rest: string[]): FieldPath => ['tests', 'tank', index, ...rest];
  const air = test.delay?.air;
  const head = useRecordHead({ record: air?.record ?? test.record });
  const found = useOfTest('delay', test, ready && head.value !== null);
  const set = (path: FieldPath, value: string) => session.edit({ kind: 'setField', option: null, path, value });
  const take = (late: number, bound: number, words: string) =>
    said(async () => {
      await set(at('conditioning', 'forceLate'), milliseconds(late));
      await set(at('setup', 'delayBound'), milliseconds(bound));
      await set(at('conditioning', 'source'), words);
    });
  const addAir = () =>
    said(async () => {
      const chosen = await chosenRecord(session);
      if (chosen)
        await session.edit({ kind: 'setField', option: null, path: at('delay', 'air'), value: { record: chosen.record, mass: test.setup.mass.typed } }); // prettier-ignore
    });
  return (
    <FieldGroup title={t.delayGroup}>
      <QuantityField path={at('delay', 'eventFrom')} kind="time" {...fieldTexts('eventFrom')} optional />
      <QuantityField path={at('delay', 'eventTo')} kind="time" {...fieldTexts('eventTo')} optional />
      {air ? (
        <>
          <p className="quiet">{t.record(air.record.name, air.record.hash, head.value?.rows ?? null)}</p>
          <QuantityField path={at('delay', 'air', 'mass')} kind="mass" {...fieldTexts('airMass')} />
        </>
      ) : (
        <button type="button" onClick={() => void addAir()}>
          {t.addAir}
        </button>
      )}
      <Answer answer={found} waiting={null}>
        {({ section, ways }) => (
          <>
            <SectionView section={section} level={3} />
            <div className="tank-tests">
              {ways.map((one) =>
                'refusal' in one ? null : (
                  <button key={one.way} type="button" onClick={() => void take(one.late, one.bound, t.knownFrom(delayWayWords[one.way]))}>
                    {t.takeDelay(delayWayWords[one.way])}
                  </button>
                ),
              )}
            </div>
          </>
        )}
      </Answer>
    </FieldGroup>
  );
} // prettier-ignore

const milliseconds = (seconds: number): string => `${Number((1000 * seconds).toPrecision(4))} ms`;
