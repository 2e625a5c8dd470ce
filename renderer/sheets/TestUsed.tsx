import type { TankTest } from '../../core/document/tests-field.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { texts } from '../texts.ts';

const t = texts.tank;

/** Which accepted test stands for computed added mass and drag in the design, and why it may. */
export function TestUsed({ tests }: { tests: readonly TankTest[] }) {
  const used = useField(['testUsed']);
  const accepted = tests.filter(({ result }) => result !== undefined);
  return (
    <FieldGroup title={t.design}>
      {used.raw === undefined || used.raw === null ? (
        <>
          <p className="quiet">{accepted.length === 0 ? t.noneAccepted : t.computedUsed}</p>
          {accepted.map(({ id, title }) => (
            <button key={id} type="button" onClick={() => used.set({ test: id, reason: t.reasonToBeStated })}>
              {t.use(title)}
            </button>
          ))}
        </>
      ) : (
        <>
          <ChoiceField
            path={['testUsed', 'test']}
            {...fieldTexts('testUsed')}
            choices={accepted.map(({ id, title }) => ({ value: id, title }))}
          />
          <TextField path={['testUsed', 'reason']} {...fieldTexts('testUsedReason')} />
          <button type="button" className="plain small" onClick={used.clear}>
            {t.useComputed}
          </button>
        </>
      )}
    </FieldGroup>
  );
}
