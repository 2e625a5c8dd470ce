import { useMemo, useState } from 'react';
import type { RowView } from '../../core/engine/result-view.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { CheckGroup } from '../parts/CheckGroup.tsx';
import { grouped } from '../parts/check-groups.ts';
import { asChoices } from '../parts/choices.ts';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { QuantityField } from '../parts/QuantityField.tsx';
import { SwitchField } from '../parts/SwitchField.tsx';
import { TableField } from '../parts/TableField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { useSolver } from '../state/solver.ts';
import { openCheck } from '../state/open-check.ts';
import { none } from '../state/none.ts';
import type { SheetName } from '../state/stages.ts';
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
      <Forces />
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

/** Whose forces judge, and every demand that is taken at the smaller of two values. */
function Forces() {
  const forces = useWorkbench((state) => state.result?.forces);
  const rows = useWorkbench((state) => state.result?.rows ?? none);
  const asks = useField(['forces', 'from']).raw === 'hand and solver';
  const solving = useSolver((state) => state.progress?.progress.what ?? null);
  const ids = useMemo(() => [...new Set(rows.flatMap(({ id, both }) => (both ? [id] : [])))], [rows]);
  const t = texts.strength;
  return (
    <FieldGroup title={texts.groups.forces}>
      <ChoiceField
        path={['forces', 'from']}
        {...fieldTexts('forcesFrom')}
        choices={[{ value: 'hand and solver', title: t.handAndSolver }]}
        none={t.handAlone}
      />
      {asks && (
        <>
          <p className={forces?.from === 'waiting' ? 'solver-waits' : 'quiet'} role="status">
            {forces?.from === 'waiting' ? t.waiting(forces.why, solving) : t.judgedByBoth(forces?.smaller ?? 0)}
          </p>
          <QuantityField path={['forces', 'mesh']} kind="length" optional {...fieldTexts('forcesMesh')} />
          <SwitchField path={['forces', 'losses']} {...fieldTexts('forcesLosses')} />
          <h3>{t.choices}</h3>
          <TableField
            path={['forces', 'choose']}
            title={t.choices}
            columns={[
              { key: 'check', title: t.check, choices: ids },
              { key: 'place', title: t.place },
              { key: 'take', title: t.take, choices: ['hand', 'solver'] },
              { key: 'reason', title: t.reason },
            ]}
            blank={{ check: ids[0] ?? '', place: '', take: 'hand', reason: '' }}
          />
        </>
      )}
    </FieldGroup>
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
              {row ? (
                <button type="button" className="link" onClick={() => openCheck(row)}>
                  {row.title}, {row.placeWords}
                </button>
              ) : (
                remark
              )}
              {row?.reason && <span className="reason">{row.reason}</span>}
              {fails + unjudged > 0 && (
                <span className="quiet small open-of">{texts.strength.open(fails + unjudged, made)}</span>
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
    <section aria-label={texts.headline.findings(findings.length)}>
      <h3>{texts.headline.findings(findings.length)}</h3>
      <ul className="findings">
        {findings.map(({ id, places: at, text, mend }) => (
          <li key={`${id}|${at[0]}|${text}`}>
            <button type="button" className="link" onClick={() => showPlace(at[0])}>
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

/** Sheets that the parts of a document are on. */
const sheetOfPart: Readonly<Record<string, SheetName>> = { grid: 'grid', mass: 'grid', designs: 'panels', panels: 'panels', loads: 'loads', water: 'loads', hydrodynamics: 'hydrodynamics', tests: 'tank', fatigue: 'fatigue', protection: 'durability', durability: 'durability', recovery: 'recovery', options: 'options', project: 'note' }; // prettier-ignore

/** Selects the place of a finding; one that is a field of the document opens the sheet where it stands. */
function showPlace(place: string | undefined): void {
  const sheet = place?.includes('.') ? sheetOfPart[place.split('.')[0]!] : undefined;
  useWorkbench.setState(sheet ? { sheet } : { selection: place ?? null });
}

/** Checks with the gravest first: what fails, what is not judged, then by utilisation. */
function AllChecks() {
  const rows = useWorkbench((state) => state.result?.rows ?? none);
  const selection = useWorkbench((state) => state.selection);
  const [only, setOnly] = useState<Only>('all');
  const groups = useMemo(() => grouped(rows.filter(keeps[only](selection))), [rows, only, selection]);
  const t = texts.strength;
  return (
    <section aria-label={t.checks}>
      <div className="filter one-of" role="group" aria-label={t.only}>
        {(['all', 'open', 'near', 'selected'] as const).map((each) => (
          <button key={each} type="button" aria-pressed={only === each} onClick={() => setOnly(each)}>
            {t.kinds[each]}
          </button>
        ))}
      </div>
      {groups.length === 0 && <p className="quiet">{t.empty[only]}</p>}
      {groups.map((group) => (
        <CheckGroup key={group.id} group={group} />
      ))}
    </section>
  );
}

const isOpen = ({ verdict }: RowView): boolean => verdict === 'fails' || verdict === 'cannot be judged';
const keeps: Readonly<Record<Only, (selection: string | null) => (row: RowView) => boolean>> = {
  all: () => () => true,
  open: () => isOpen,
  near: () => (row) => row.near || row.verdict === 'fails',
  selected: (selection) => (row) => row.place === selection,
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
