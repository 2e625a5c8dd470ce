import type { Json } from '../../core/document/edit.ts';
import { SectionView } from '../parts/Blocks.tsx';
import { ChoiceField, type Choice } from '../parts/ChoiceField.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { TableField } from '../parts/TableField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { useSection } from '../state/use-section.ts';
import { texts } from '../texts.ts';

const t = texts.fatigue;
const choicesOf = (words: Readonly<Record<string, string>>): readonly Choice[] =>
  Object.entries(words).map(([value, title]) => ({ value, title }));

/** How the force swings over the life, what surrounds the details, and the life of each. */
export function FatigueSheet() {
  return (
    <>
      <Loading />
      <FieldGroup title={t.details}>
        <ChoiceField
          path={['fatigue', 'environment']}
          {...fieldTexts('environment')}
          choices={choicesOf(t.environments)}
          none={t.byProtection}
        />
        <ChoiceField
          path={['fatigue', 'access']}
          {...fieldTexts('access')}
          choices={choicesOf(t.accesses)}
          none={t.gravest}
        />
        <ChoiceField
          path={['fatigue', 'consequence']}
          {...fieldTexts('consequence')}
          choices={choicesOf(t.consequences)}
          none={t.gravest}
        />
        <Factor />
      </FieldGroup>
      <FieldGroup title={t.apart}>
        <TableField
          path={['fatigue', 'apart']}
          title={t.apart}
          columns={[
            { key: 'kind', title: t.kind, choices: ['slam', 'snap'] },
            { key: 'range', title: t.rangeOfForce },
            { key: 'cycles', title: t.inLife, number: true },
            { key: 'source', title: t.source },
          ]}
          blank={{ kind: 'slam', range: '', cycles: 1, source: t.toBeStated }}
        />
      </FieldGroup>
      <Lives />
    </>
  );
}

/** The factor stated in place of that by access and consequence. */
function Factor() {
  const field = useField(['fatigue', 'factor']);
  if (field.raw === undefined)
    return (
      <button type="button" className="plain small" onClick={() => field.set({ value: 10, reason: t.toBeStated })}>
        {t.stateFactor}
      </button>
    );
  return (
    <>
      <NumberField path={['fatigue', 'factor', 'value']} {...fieldTexts('designFatigueFactor')} />
      <TextField path={['fatigue', 'factor', 'reason']} {...fieldTexts('factorReason')} />
      <button type="button" className="plain small" onClick={field.clear}>
        {t.byAccess}
      </button>
    </>
  );
}

/** What each kind of history begins with; its force is that of service where the document tells it. */
const firsts = (range: string, inch: boolean): Readonly<Record<string, Json>> => ({
  stated: { kind: 'stated', range, cyclesPerYear: 4e6, source: t.toBeStated },
  weibull: { kind: 'weibull', largestRange: range, inCycles: 1e8, shape: 1, cyclesPerYear: 4e6, source: t.toBeStated },
  scatter: {
    kind: 'scatter',
    forcePerMetre: inch ? '1000 lbf/ft' : '15 kN/m',
    states: [{ height: inch ? '5 ft' : '1.5 m', period: '6 s', probability: 1 }],
    source: t.toBeStated,
  },
});

function Loading() {
  const field = useField(['fatigue', 'loading']);
  const inch = useField(['units']).raw === 'inch';
  const force = useField(['loads', 'service', 'force']).raw;
  const kind = useField(['fatigue', 'loading', 'kind']).raw;
  const path = ['fatigue', 'loading'] as const;
  const first = firsts(typeof force === 'string' ? force : inch ? '20 kip' : '100 kN', inch);
  return (
    <FieldGroup title={t.history}>
      <label className="field">
        <span>{t.kindOfHistory}</span>
        <select
          className="entry"
          value={typeof kind === 'string' ? kind : ''}
          onChange={({ target }) => (target.value === '' ? field.clear() : field.set(first[target.value]!))}
        >
          <option value="">{t.everyCycle}</option>
          {choicesOf(t.histories).map(({ value, title }) => (
            <option key={value} value={value}>
              {title}
            </option>
          ))}
        </select>
      </label>
      {kind === 'stated' && <QuantityField path={[...path, 'range']} kind="force" {...fieldTexts('rangeOfForce')} />}
      {kind === 'weibull' && (
        <>
          <QuantityField path={[...path, 'largestRange']} kind="force" {...fieldTexts('largestRange')} />
          <NumberField path={[...path, 'inCycles']} {...fieldTexts('inCycles')} />
          <NumberField path={[...path, 'shape']} {...fieldTexts('weibullShape')} />
        </>
      )}
      {(kind === 'stated' || kind === 'weibull') && (
        <NumberField path={[...path, 'cyclesPerYear']} {...fieldTexts('cyclesPerYear')} />
      )}
      {kind === 'scatter' && (
        <>
          <QuantityField path={[...path, 'forcePerMetre']} kind="lineForce" {...fieldTexts('forcePerMetre')} />
          <TableField
            path={[...path, 'states']}
            title={t.states}
            columns={[
              { key: 'height', title: t.height },
              { key: 'period', title: t.period },
              { key: 'probability', title: t.probability, number: true },
            ]}
            blank={{ height: '', period: '', probability: 0 }}
          />
        </>
      )}
      {typeof kind === 'string' && <TextField path={[...path, 'source']} {...fieldTexts('source')} />}
    </FieldGroup>
  );
}

/** The note's section on fatigue. */
function Lives() {
  const section = useSection('fatigue');
  if (!section) return <p className="quiet">{t.reading}</p>;
  return <SectionView section={section} level={2} />;
}
