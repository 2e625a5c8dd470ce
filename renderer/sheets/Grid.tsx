import type { FieldPath } from '../../core/document/edit.ts';
import { CatalogueField } from '../parts/CatalogueField.tsx';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { asChoices } from '../parts/choices.ts';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { PlaceChecks } from '../parts/PlaceChecks.tsx';
import { PointsTable } from '../parts/PointsTable.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { TableField } from '../parts/TableField.tsx';
import { useField } from '../state/use-field.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** The grid of tubes, what it hangs from, and mass that is not drawn. */
export function GridSheet() {
  const padEyes = useField(['grid', 'padEyes']);
  const apexNeeded = useField(['grid', 'suspension', 'kind']).raw === 'bridle';
  const suspensionEye = useField(['grid', 'suspension', 'eye']);
  const attachments = useField(['grid', 'suspension', 'attachments']);
  return (
    <>
      <FieldGroup title={texts.groups.tubes}>
        <ChoiceField
          path={['grid', 'arrangement']}
          {...fieldTexts('arrangement')}
          choices={asChoices(['stacked', 'flush'])}
        />
        <QuantityField path={['grid', 'jointThroat']} kind="length" {...fieldTexts('jointThroat')} />
        <FlareWeldFields />
        <JointFields />
      </FieldGroup>
      <TubeSetFields set="mainTubes" />
      <TubeSetFields set="crossTubes" />
      <FieldGroup title={texts.groups.suspension}>
        <ChoiceField
          path={['grid', 'suspension', 'kind']}
          {...fieldTexts('suspensionKind')}
          choices={asChoices(['line', 'bridle', 'strut'])}
        />
        <QuantityField
          path={['grid', 'suspension', 'apex']}
          kind="length"
          {...fieldTexts('apex')}
          optional={!apexNeeded}
        />
        <PointsTable path={['grid', 'suspension', 'attachments']} title={texts.groups.suspension} prefix="S" />
      </FieldGroup>
      <EyeFields path={['grid', 'suspension', 'eye']} />
      <FieldGroup title={texts.groups.padEyes}>
        {padEyes.raw === undefined ? (
          <p className="quiet">
            {texts.grid.noPadEyes}{' '}
            <button
              type="button"
              onClick={() =>
                padEyes.set({ points: rename(attachments.raw), eye: suspensionEye.raw as never, apex: '2 m' })
              }
            >
              {texts.grid.addPadEyes}
            </button>
          </p>
        ) : (
          <>
            <QuantityField path={['grid', 'padEyes', 'apex']} kind="length" {...fieldTexts('apex')} />
            <PointsTable path={['grid', 'padEyes', 'points']} title={texts.groups.padEyes} prefix="P" />
            <button type="button" className="plain" onClick={padEyes.clear}>
              {texts.grid.removePadEyes}
            </button>
          </>
        )}
      </FieldGroup>
      {padEyes.raw !== undefined && <EyeFields path={['grid', 'padEyes', 'eye']} />}
      <FieldGroup title={texts.groups.allowances}>
        <NumberField path={['mass', 'weld']} {...fieldTexts('weldAllowance')} />
        <NumberField path={['mass', 'tolerance']} {...fieldTexts('tolerance')} />
        <TableField
          path={['mass', 'extras']}
          title={texts.groups.allowances}
          columns={extras}
          blank={{ name: 'Anode', mass: '10 kg', volume: '0.004 m^3', x: '0 mm', y: '0 mm', z: '0 mm' }}
        />
      </FieldGroup>
      <PlaceChecks kinds={['tube', 'attachment', 'pad eye', 'crossing']} />
    </>
  );
}

/** How far the joints of tube on tube give way in the plate as one structure. */
function JointFields() {
  const joints = useField(['grid', 'joints']);
  const raw = (typeof joints.raw === 'object' && joints.raw !== null ? joints.raw : {}) as Record<string, unknown>;
  const at = (...rest: string[]): FieldPath => ['grid', 'joints', ...rest];
  const blankRange = { low: 0.5, high: 2, source: texts.grid.rangeSource };
  return (
    <>
      <ChoiceField
        path={at('stiffness')}
        {...fieldTexts('jointStiffness')}
        choices={asChoices(['rigid', 'published', 'stated'])}
      />
      {raw['stiffness'] === 'stated' && (
        <>
          <QuantityField path={at('outOfPlane')} kind="turningStiffness" {...fieldTexts('jointOutOfPlane')} />
          <QuantityField path={at('inPlane')} kind="turningStiffness" {...fieldTexts('jointInPlane')} />
          <QuantityField path={at('axial')} kind="stiffness" {...fieldTexts('jointAxial')} optional />
          <QuantityField path={at('twist')} kind="turningStiffness" {...fieldTexts('jointTwist')} optional />
          <TextField path={at('source')} {...fieldTexts('jointSource')} />
        </>
      )}
      {raw['range'] === undefined ? (
        (raw['stiffness'] === 'stated' || raw['stiffness'] === 'published') && (
          <button type="button" className="plain" onClick={() => joints.set({ ...raw, range: blankRange } as never)}>
            {texts.grid.addJointRange}
          </button>
        )
      ) : (
        <>
          <NumberField path={at('range', 'low')} {...fieldTexts('jointRangeLow')} />
          <NumberField path={at('range', 'high')} {...fieldTexts('jointRangeHigh')} />
          <TextField path={at('range', 'source')} {...fieldTexts('jointRangeSource')} />
        </>
      )}
      {joints.raw !== undefined && (
        <button type="button" className="plain" onClick={joints.clear}>
          {texts.grid.rigidJoints}
        </button>
      )}
    </>
  );
}

const extras = [
  { key: 'name', title: texts.columns.what },
  { key: 'mass', title: texts.columns.mass },
  { key: 'volume', title: texts.columns.volume },
  { key: 'x', title: 'x' },
  { key: 'y', title: 'y' },
  { key: 'z', title: 'z' },
];

/** Pad eyes begin where the plate hangs, under names of their own. */
function rename(points: unknown): never {
  const list = Array.isArray(points) ? (points as readonly object[]) : [];
  return list.map((point, n) => ({ ...point, id: `P${n + 1}` })) as never;
}

/** How welds on rounded flanks and corners are made: of stacked tubes, of wide tubes let in, of panels that end there. */
function FlareWeldFields() {
  const process = useField(['grid', 'flareWeld', 'process']).raw;
  return (
    <>
      <ChoiceField
        path={['grid', 'flareWeld', 'process']}
        {...fieldTexts('flareProcess')}
        choices={asChoices(['stick or self-shielded wire', 'gas-shielded wire', 'submerged arc'])}
        none={texts.byDefault('stick or self-shielded wire')}
      />
      {typeof process === 'string' && (
        <TextField path={['grid', 'flareWeld', 'proof']} {...fieldTexts('flareProof')} optional />
      )}
    </>
  );
}

function TubeSetFields({ set }: { set: 'mainTubes' | 'crossTubes' }) {
  const choices = useWorkbench((state) => state.choices);
  const at = (...rest: string[]): FieldPath => ['grid', set, ...rest];
  const field = useField(at());
  const raw = (typeof field.raw === 'object' && field.raw !== null ? field.raw : {}) as Record<string, unknown>;
  const each = raw['tubes'] !== undefined;
  const { tubes: _tubes, count: _count, spacing: _spacing, ...rest } = raw;
  const length = set === 'mainTubes' ? '1 m' : '800 mm';
  const letters = (n: number) => (set === 'mainTubes' ? `${n * 1000} mm` : `${n * 800} mm`);
  return (
    <FieldGroup title={texts.groups[set]}>
      <CatalogueField
        path={at('section')}
        {...fieldTexts('section')}
        rows={choices?.sections.map(({ id }) => id) ?? []}
      />
      <CatalogueField
        path={at('material')}
        {...fieldTexts('material')}
        rows={choices?.materials.map(({ id }) => id) ?? []}
      />
      <ChoiceField path={at('flooding')} {...fieldTexts('flooding')} choices={asChoices(['flooded', 'sealed'])} />
      <QuantityField path={at('vent')} kind="length" {...fieldTexts('vent')} optional />
      <QuantityField path={at('drain')} kind="length" {...fieldTexts('drain')} optional />
      <div className="field">
        <span>{texts.grid.spacingKind}</span>
        <div className="entry" role="group" aria-label={texts.grid.spacingKind}>
          {[false, true].map((byItself) => (
            <button
              key={String(byItself)}
              type="button"
              aria-pressed={each === byItself}
              onClick={() =>
                each !== byItself &&
                field.set(
                  (byItself
                    ? { ...rest, tubes: [{ at: letters(0) }, { at: letters(1) }] }
                    : { ...rest, count: 2, spacing: length }) as never,
                )
              }
            >
              {byItself ? texts.grid.each : texts.grid.even}
            </button>
          ))}
        </div>
      </div>
      {each ? (
        <TableField path={at('tubes')} title={texts.groups[set]} columns={tubeColumns} blank={{ at: letters(2) }} />
      ) : (
        <>
          <NumberField path={at('count')} {...fieldTexts('count')} />
          <QuantityField path={at('spacing')} kind="length" {...fieldTexts('spacing')} />
        </>
      )}
      <QuantityField path={at('overhang')} kind="length" {...fieldTexts('overhang')} />
    </FieldGroup>
  );
}

const tubeColumns = [
  { key: 'id', title: texts.columns.name },
  { key: 'at', title: texts.columns.centreLine },
  { key: 'from', title: texts.columns.from },
  { key: 'to', title: texts.columns.to },
  { key: 'section', title: texts.columns.section },
];

function EyeFields({ path }: { path: FieldPath }) {
  const choices = useWorkbench((state) => state.choices);
  const at = (name: string): FieldPath => [...path, name];
  return (
    <FieldGroup title={texts.groups.eye}>
      <CatalogueField
        path={at('material')}
        {...fieldTexts('material')}
        rows={choices?.materials.map(({ id }) => id) ?? []}
      />
      <QuantityField path={at('thickness')} kind="length" {...fieldTexts('eyeThickness')} />
      <QuantityField path={at('width')} kind="length" {...fieldTexts('eyeWidth')} />
      <QuantityField path={at('height')} kind="length" {...fieldTexts('eyeHeight')} />
      <QuantityField path={at('holeDiameter')} kind="length" {...fieldTexts('holeDiameter')} />
      <QuantityField path={at('pinDiameter')} kind="length" {...fieldTexts('pinDiameter')} />
      <QuantityField path={at('edge')} kind="length" {...fieldTexts('eyeEdge')} />
      <QuantityField path={at('weldThroat')} kind="length" {...fieldTexts('weldThroat')} />
      <CheekFields path={at('cheek')} />
      <FootPlateFields path={at('footPlate')} />
    </FieldGroup>
  );
}

function CheekFields({ path }: { path: FieldPath }) {
  const field = useField(path);
  const inch = useField(['units']).raw === 'inch';
  if (field.raw === undefined)
    return (
      <button
        type="button"
        className="plain small"
        onClick={() =>
          field.set(
            inch
              ? { thickness: '0.25 in', diameter: '2.5 in', weldThroat: '0.125 in' }
              : { thickness: '6 mm', diameter: '60 mm', weldThroat: '3 mm' },
          )
        }
      >
        {texts.groups.addCheek}
      </button>
    );
  return (
    <>
      <QuantityField path={[...path, 'thickness']} kind="length" {...fieldTexts('cheekThickness')} />
      <QuantityField path={[...path, 'diameter']} kind="length" {...fieldTexts('cheekDiameter')} />
      <QuantityField path={[...path, 'weldThroat']} kind="length" {...fieldTexts('cheekThroat')} />
      <button type="button" className="plain small" onClick={field.clear}>
        {texts.groups.noCheek}
      </button>
    </>
  );
}

function FootPlateFields({ path }: { path: FieldPath }) {
  const field = useField(path);
  const inch = useField(['units']).raw === 'inch';
  const choices = useWorkbench((state) => state.choices);
  const at = (name: string): FieldPath => [...path, name];
  if (field.raw === undefined)
    return (
      <button
        type="button"
        className="plain small"
        onClick={() =>
          field.set(
            inch
              ? { thickness: '0.75 in', gauge: '3.5 in', edge: '1.25 in', pitch: '3.5 in', end: '1.25 in', pairs: 2, bolt: '5/8 in', class: 'A325' }
              : { thickness: '20 mm', gauge: '90 mm', edge: '30 mm', pitch: '90 mm', end: '30 mm', pairs: 2, bolt: 'M16', class: '8.8' },
          )
        }
      >
        {texts.groups.addFootPlate}
      </button>
    ); // prettier-ignore
  return (
    <>
      <QuantityField path={at('thickness')} kind="length" {...fieldTexts('footThickness')} />
      <CatalogueField path={at('bolt')} {...fieldTexts('footBolt')} rows={choices?.bolts ?? []} />
      <CatalogueField path={at('class')} {...fieldTexts('footClass')} rows={choices?.classes ?? []} />
      <NumberField path={at('pairs')} {...fieldTexts('footPairs')} />
      <QuantityField path={at('gauge')} kind="length" {...fieldTexts('footGauge')} />
      <QuantityField path={at('pitch')} kind="length" {...fieldTexts('footPitch')} />
      <QuantityField path={at('edge')} kind="length" {...fieldTexts('footEdge')} />
      <QuantityField path={at('end')} kind="length" {...fieldTexts('footEnd')} />
      <button type="button" className="plain small" onClick={field.clear}>
        {texts.groups.noFootPlate}
      </button>
    </>
  );
}
