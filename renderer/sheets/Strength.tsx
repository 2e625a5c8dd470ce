import { useState } from 'react';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { CheckLine } from '../parts/CheckLine.tsx';
import { asChoices } from '../parts/choices.ts';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { QuantityField } from '../parts/QuantityField.tsx';
import { SwitchField } from '../parts/SwitchField.tsx';
import { TableField } from '../parts/TableField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { none } from '../state/none.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import '../parts/CheckLine.css';
import './strength.css';

type Only = 'open' | 'near' | 'selected' | 'all';

/** Every check, by limit state; with the basis that judges. */
export function StrengthSheet() {
  return (
    <>
      <LimitStates />
      <Findings />
      <AllChecks />
      <FieldGroup title={texts.groups.basis}>
        <ChoiceField
          path={['basis', 'table']}
          {...fieldTexts('table')}
          choices={asChoices(['EN 1993', 'AISC 360 ASD'])}
        />
        <QuantityField path={['basis', 'life']} kind="time" {...fieldTexts('life')} />
        <Overrides />
      </FieldGroup>
      <FieldGroup title={texts.groups.protection}>
        <SwitchField path={['protection', 'cathodic']} {...fieldTexts('cathodic')} />
        <QuantityField path={['protection', 'lossPerFace', 'panel']} kind="length" {...fieldTexts('lossPanel')} />
        <QuantityField
          path={['protection', 'lossPerFace', 'tubeOutside']}
          kind="length"
          {...fieldTexts('lossOutside')}
        />
        <QuantityField path={['protection', 'lossPerFace', 'tubeInside']} kind="length" {...fieldTexts('lossInside')} />
        <TextField path={['protection', 'lossPerFace', 'source']} {...fieldTexts('source')} />
      </FieldGroup>
    </>
  );
}

function LimitStates() {
  const states = useWorkbench((state) => state.result?.limitStates ?? none);
  return (
    <table className="limit-states">
      <caption className="unseen">{texts.strength.limitStates}</caption>
      <thead>
        <tr>
          <th scope="col">{texts.strength.limitState}</th>
          <th scope="col">{texts.strength.verdict}</th>
          <th scope="col" className="number">
            {texts.strength.use}
          </th>
          <th scope="col">{texts.strength.governs}</th>
        </tr>
      </thead>
      <tbody>
        {states.map(({ name, verdict, highest, row, remark, fails, unjudged, made }) => (
          <tr key={name} className={verdict === 'fails' ? 'fails' : verdict === 'not judged' ? 'unjudged' : undefined}>
            <th scope="row">{name}</th>
            <td className="verdict">{verdict}</td>
            <td className="number">{highest?.utilisation == null ? '–' : highest.utilisation.toFixed(2)}</td>
            <td>
              {row ? `${row.title}, ${row.placeWords}${row.reason ? `: ${row.reason}` : ''}` : remark}
              {fails + unjudged > 0 && (
                <span className="quiet small">{` (${texts.strength.open(fails + unjudged, made)})`}</span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Findings() {
  const findings = useWorkbench((state) => state.result?.findings ?? none);
  const places = useWorkbench((state) => state.result?.places);
  if (findings.length === 0) return null;
  return (
    <section>
      <h3>{texts.headline.findings(findings.length)}</h3>
      <ul className="findings">
        {findings.map(({ id, places: at, text, mend }) => (
          <li key={`${id}|${at[0]}|${text}`}>
            <button type="button" className="plain" onClick={() => useWorkbench.setState({ selection: at[0] ?? null })}>
              {at
                .slice(0, 3)
                .map((place) => places?.[place] ?? place)
                .join(', ')}
              {at.length > 3 ? ` +${at.length - 3}` : ''}
            </button>
            <span>
              {text} <span className="quiet">{mend}</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function AllChecks() {
  const rows = useWorkbench((state) => state.result?.rows ?? none);
  const selection = useWorkbench((state) => state.selection);
  const [only, setOnly] = useState<Only>('all');
  const shown = rows.filter((row) =>
    only === 'open'
      ? row.verdict === 'fails' || row.verdict === 'cannot be judged'
      : only === 'near'
        ? row.near || row.verdict === 'fails'
        : only === 'selected'
          ? row.place === selection
          : true,
  );
  const titles = [...new Set(shown.map(({ id }) => id))];
  const openCheck = useWorkbench((state) => state.openCheck);
  return (
    <section>
      <div className="filter" role="group" aria-label={texts.strength.only}>
        {(['all', 'open', 'near', 'selected'] as const).map((each) => (
          <button key={each} type="button" aria-pressed={only === each} onClick={() => setOnly(each)}>
            {each === 'open' ? texts.strength.openOnes : texts.strength[each]}
          </button>
        ))}
      </div>
      {titles.length === 0 && <p className="quiet">{texts.strength.empty}</p>}
      {titles.map((id) => {
        const of = shown.filter((row) => row.id === id);
        const loud = of.filter(({ verdict }) => verdict !== 'passes').length;
        return (
          <details
            key={id}
            open={openCheck?.check === id || titles.length <= 3 || undefined}
            className={loud > 0 ? 'loud-group' : ''}
          >
            <summary>
              <span>{of[0]!.title}</span>
              <span className="number">{largest(of)}</span>
              <span className="quiet small">{texts.strength.places(of.length)}</span>
            </summary>
            <ul className="check-lines">
              {of.map((row) => (
                <CheckLine key={`${row.place}|${row.direction}`} row={row} />
              ))}
            </ul>
          </details>
        );
      })}
    </section>
  );
}

const largest = (rows: readonly { readonly utilisation: number | null }[]): string => {
  const most = rows.reduce<number | null>(
    (max, { utilisation }) => (utilisation !== null && utilisation > (max ?? -1) ? utilisation : max),
    null,
  );
  return most === null ? '–' : most.toFixed(2);
};

function Overrides() {
  const table = useField(['basis', 'table']).raw;
  const basis = useWorkbench((state) => state.choices?.bases.find(({ id }) => id === table));
  const names = basis?.factors.map(({ name }) => name) ?? [];
  return (
    <>
      <h3>{texts.strength.overrides}</h3>
      <TableField
        path={['basis', 'overrides']}
        title={texts.strength.overrides}
        columns={[
          { key: 'factor', title: texts.strength.factor, choices: names },
          { key: 'value', title: texts.strength.value, number: true },
          { key: 'reason', title: texts.strength.reason },
        ]}
        blank={{ factor: names[0] ?? '', value: basis?.factors[0]?.value ?? 1, reason: '' }}
      />
    </>
  );
}
