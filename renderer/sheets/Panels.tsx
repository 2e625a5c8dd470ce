import { useState } from 'react';
import type { FieldPath } from '../../core/document/edit.ts';
import { BayPlan } from '../parts/BayPlan.tsx';
import { CatalogueField } from '../parts/CatalogueField.tsx';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { asChoices } from '../parts/choices.ts';
import { DesignPicker } from '../parts/DesignPicker.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { PlaceChecks } from '../parts/PlaceChecks.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { TableField } from '../parts/TableField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { baysInRange } from '../parts/bays-in-range.ts';
import { useDesigns } from '../state/use-designs.ts';
import { useField } from '../state/use-field.ts';
import { useSession } from '../state/session-context.ts';
import { none } from '../state/none.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './panels.css';

/** Which bays are closed, and with what. */
export function PanelsSheet() {
  const { names, shown, show } = useDesigns();
  return (
    <>
      <Covering designs={names} />
      <DesignPicker names={names} shown={shown} onShow={show} />
      {shown === null ? <p className="quiet">{texts.panels.noDesign}</p> : <PanelFields key={shown} design={shown} />}
      <PlaceChecks kinds={['bay', 'panel']} ids={(id) => id.startsWith('panel-')} />
    </>
  );
}

/** Bays chosen in the plan or by a typed range, closed with a design or opened. */
function Covering({ designs }: { designs: readonly string[] }) {
  const session = useSession();
  const bays = useWorkbench((state) => state.bays);
  const all = useWorkbench((state) => state.result?.bays ?? none);
  const option = useWorkbench((state) => state.document?.option ?? null);
  const [range, setRange] = useState('');
  const choose = (chosen: readonly string[]) =>
    useWorkbench.setState({ bays: chosen, selection: chosen.at(-1) ?? null });
  const cover = (design: string | null) => {
    // A panel over several bays is opened by its own name.
    const keys = [...new Set(bays.map((id) => all.find((bay) => bay.id === id)?.panel ?? id))];
    const named = design === null ? keys.filter((key) => all.some(({ panel }) => panel === key)) : bays;
    if (named.length > 0) void session.edit({ kind: 'coverBays', option, bays: named, design });
  };
  return (
    <section className="covering">
      <BayPlan chosen={bays} onChoose={choose} />
      <div className="covering-acts">
        <label>
          <span className="unseen">{texts.panels.range}</span>
          <input
            type="text"
            className="range"
            placeholder={texts.panels.range}
            value={range}
            onChange={({ target }) => {
              setRange(target.value);
              const found = baysInRange(
                target.value,
                all.map(({ id }) => id),
              );
              if (found.length > 0) choose(found);
            }}
          />
        </label>
        <button type="button" onClick={() => choose(all.map(({ id }) => id))}>
          {texts.panels.all}
        </button>
        <button type="button" disabled={bays.length === 0} onClick={() => choose([])}>
          {texts.panels.none}
        </button>
        <label className="close-with">
          {texts.panels.close}{' '}
          <select
            value=""
            disabled={bays.length === 0}
            onChange={({ target }) => target.value !== '' && cover(target.value)}
          >
            <option value="">…</option>
            {designs.map((design) => (
              <option key={design} value={design}>
                {design}
              </option>
            ))}
          </select>
        </label>
        <button type="button" disabled={bays.length === 0} onClick={() => cover(null)}>
          {texts.panels.openThem}
        </button>
        <span className="quiet small" role="status">
          {texts.panels.chosen(bays.length)}
        </span>
      </div>
    </section>
  );
}

function PanelFields({ design }: { design: string }) {
  const choices = useWorkbench((state) => state.choices);
  const at = (...rest: string[]): FieldPath => ['designs', design, ...rest];
  const longTerm = useField(at('longTerm'));
  const material = useField(at('material')).raw;
  const family = choices?.materials.find(({ id }) => id === material)?.family;
  const creeps = family === 'thermoplastic' || family === 'laminate' || longTerm.raw !== undefined;
  return (
    <>
      <FieldGroup title={texts.groups.plate}>
        <ChoiceField path={at('side')} {...fieldTexts('side')} choices={asChoices(['topside', 'underside'])} />
        <QuantityField path={at('thickness')} kind="length" {...fieldTexts('thickness')} />
        <CatalogueField
          path={at('material')}
          {...fieldTexts('material')}
          rows={choices?.materials.map(({ id }) => id) ?? []}
        />
        <QuantityField path={at('cornerNotch')} kind="length" {...fieldTexts('cornerNotch')} optional />
      </FieldGroup>
      <FieldGroup title={texts.groups.overlap}>
        <QuantityField path={at('overlap', 'onMain')} kind="length" {...fieldTexts('onMain')} />
        <QuantityField path={at('overlap', 'onCross')} kind="length" {...fieldTexts('onCross')} />
        <details>
          <summary>{texts.panels.sidesDiffer}</summary>
          {(['mainLow', 'mainHigh', 'crossLow', 'crossHigh'] as const).map((side) => (
            <QuantityField
              key={side}
              path={at('overlap', 'sides', side)}
              kind="length"
              label={texts.panels.sides[side]}
              optional
            />
          ))}
        </details>
      </FieldGroup>
      <FieldGroup title={texts.groups.support}>
        <ChoiceField
          path={at('support')}
          {...fieldTexts('supportKind')}
          choices={asChoices(['four sides', 'main tubes', 'cross tubes'])}
        />
        <ChoiceField
          path={at('edges')}
          {...fieldTexts('edges')}
          choices={asChoices(['hinged', 'held'])}
          none={texts.byDefault('hinged')}
        />
      </FieldGroup>
      <FieldGroup title={texts.groups.holes}>
        <TableField
          path={at('holes')}
          title={texts.groups.holes}
          columns={holeColumns}
          blank={{ x: '0 mm', y: '0 mm', diameter: '25 mm', purpose: 'vent' }}
        />
      </FieldGroup>
      {creeps && (
        <FieldGroup title={texts.groups.longTerm}>
          <QuantityField path={at('longTerm', 'modulus')} kind="stress" {...fieldTexts('modulus')} />
          <QuantityField path={at('longTerm', 'strength')} kind="stress" {...fieldTexts('strengthLong')} />
          <QuantityField path={at('longTerm', 'bearing')} kind="stress" {...fieldTexts('bearingLong')} optional />
          <QuantityField path={at('longTerm', 'duration')} kind="time" {...fieldTexts('duration')} />
          <TextField path={at('longTerm', 'source')} {...fieldTexts('source')} />
        </FieldGroup>
      )}
    </>
  );
}

const holeColumns = [
  { key: 'x', title: 'x' },
  { key: 'y', title: 'y' },
  { key: 'diameter', title: texts.columns.diameter },
  { key: 'purpose', title: texts.columns.purpose, choices: ['vent', 'drain', 'lifting', 'other'] },
];
