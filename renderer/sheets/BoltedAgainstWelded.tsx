import { useState } from 'react';
import { SectionView } from '../parts/Blocks.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { useSection } from '../state/use-section.ts';
import { texts } from '../texts.ts';

const t = texts.against;
const money = ['labourPerHour', 'vesselPerHour', 'platePerKg', 'cutPerMetre', 'perHole', 'perBolt', 'weldPerMetre', 'recoatPerMetre', 'recoatPerHole'] as const; // prettier-ignore
const time = ['minutesToPlacePanel', 'minutesToFitBolt', 'minutesToRemoveBolt', 'minutesToWeldMetre', 'minutesToCutMetre', 'peopleOnDeck', 'removals'] as const; // prettier-ignore

/** The shown option bolted and welded with all else equal, by the user's own rates. Appraised when it is opened, not before. */
export function BoltedAgainstWelded() {
  const [isOpen, setOpen] = useState(false);
  const rates = useField(['rates']);
  return (
    <section className="against">
      <h3>{t.title}</h3>
      <p className="quiet">{t.help}</p>
      {rates.raw === undefined ? (
        <button type="button" onClick={() => rates.set({ currency: t.currency, source: t.toBeStated })}>
          {t.giveRates}
        </button>
      ) : (
        <details>
          <summary>{t.rates}</summary>
          <FieldGroup title={t.whose}>
            <TextField path={['rates', 'currency']} {...fieldTexts('currency')} />
            <TextField path={['rates', 'source']} {...fieldTexts('ratesSource')} />
          </FieldGroup>
          {(
            [
              ['money', money],
              ['time', time],
            ] as const
          ).map(([group, names]) => (
            <FieldGroup key={group} title={t[group]}>
              {names.map((name) => (
                <NumberField key={name} path={['rates', name]} label={t.names[name]} optional />
              ))}
            </FieldGroup>
          ))}
          <button type="button" className="plain small" onClick={rates.clear}>
            {t.noRates}
          </button>
        </details>
      )}
      {isOpen ? (
        <Page />
      ) : (
        <button type="button" onClick={() => setOpen(true)}>
          {t.open}
        </button>
      )}
    </section>
  );
}

function Page() {
  const section = useSection('against');
  return section ? <SectionView section={section} level={3} /> : <p className="quiet">{t.reading}</p>;
}
