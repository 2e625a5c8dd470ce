import { SectionView } from '../parts/Blocks.tsx';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { Folding } from '../parts/Folding.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { SwitchField } from '../parts/SwitchField.tsx';
import { TableField } from '../parts/TableField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { useSection } from '../state/use-section.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

const t = texts.durability;
const choicesOf = (words: Readonly<Record<string, string>>) =>
  Object.entries(words).map(([value, title]) => ({ value, title }));

/** Panels that are joined to the tubes otherwise than the others, one field each. */
function PanelsApart() {
  const result = useWorkbench((state) => state.result);
  const panels = new Set((result?.bays ?? []).flatMap(({ panel }) => panel ?? []));
  if (panels.size === 0) return null;
  return (
    <Folding isUsuallyFolded title={t.apart}>
      {[...panels].map((panel) => (
        <ChoiceField
          key={panel}
          path={['durability', 'panelsApart', panel]}
          label={panel}
          help={t.apartHelp}
          choices={choicesOf(t.joints)}
          none={t.asOthers}
        />
      ))}
    </Folding>
  );
}

/** Thickness and density of the coat, where its mass counts. */
function CoatingMass() {
  const path = ['protection', 'coating'] as const;
  const field = useField(path);
  if (field.raw === undefined || field.raw === null)
    return (
      <button
        type="button"
        className="link small"
        onClick={() => field.set({ thickness: '350 um', dryDensity: '1400 kg/m^3' })}
      >
        {t.addCoating}
      </button>
    );
  return (
    <>
      <QuantityField path={[...path, 'thickness']} kind="length" {...fieldTexts('coatingThickness')} />
      <QuantityField path={[...path, 'dryDensity']} kind="density" {...fieldTexts('coatingDensity')} />
      <button type="button" className="link small" onClick={field.clear}>
        {t.noCoating}
      </button>
    </>
  );
}

/** What the sea does to the plate, what protects it, what it weighed when built, and what to look at. */
export function CorrosionAndLifeSheet() {
  const field = useField(['durability']);
  const section = useSection('durability');
  return (
    <>
      <FieldGroup title={t.protection}>
        <SwitchField path={['protection', 'cathodic']} {...fieldTexts('cathodic')} />
        <SwitchField path={['protection', 'galvanised']} {...fieldTexts('galvanised')} />
        <CoatingMass />
        <QuantityField path={['protection', 'lossPerFace', 'panel']} kind="length" {...fieldTexts('lossPanel')} />
        <QuantityField
          path={['protection', 'lossPerFace', 'tubeOutside']}
          kind="length"
          {...fieldTexts('lossOutside')}
        />
        {field.raw === undefined && (
          <button
            type="button"
            onClick={() => field.set({ coating: 'III', bores: 'stagnant', panels: 'bonded', fasteners: 'bonded' })}
          >
            {t.describe}
          </button>
        )}
      </FieldGroup>
      {field.raw !== undefined && (
        <>
          <FieldGroup title={t.joined}>
            <ChoiceField
              path={['durability', 'coating']}
              {...fieldTexts('coatingCategory')}
              choices={choicesOf(t.coatings)}
            />
            <ChoiceField path={['durability', 'bores']} {...fieldTexts('bores')} choices={choicesOf(t.bores)} />
            <ChoiceField
              path={['durability', 'zone']}
              {...fieldTexts('corrosionZone')}
              choices={choicesOf(t.zones)}
              none={t.alwaysUnder}
            />
            <ChoiceField
              path={['durability', 'panels']}
              {...fieldTexts('panelsJoined')}
              choices={choicesOf(t.joints)}
            />
            <ChoiceField
              path={['durability', 'fasteners']}
              {...fieldTexts('fastenersJoined')}
              choices={choicesOf(t.joints)}
            />
            <QuantityField
              path={['durability', 'resistivity']}
              kind="resistivity"
              {...fieldTexts('resistivity')}
              optional
            />
          </FieldGroup>
          <PanelsApart />
          <Anodes />
          <AsBuilt />
        </>
      )}
      {section ? <SectionView section={section} level={2} /> : <p className="quiet">{t.reading}</p>}
    </>
  );
}

function Anodes() {
  const path = ['durability', 'anodes'] as const;
  const field = useField(path);
  const inch = useField(['units']).raw === 'inch';
  const form = useField([...path, 'form']).raw;
  if (field.raw === undefined)
    return (
      <FieldGroup title={t.anodes}>
        <button
          type="button"
          onClick={() =>
            field.set({
              alloy: 'aluminium',
              form: 'stand-off',
              count: 4,
              mass: inch ? '33 lbm' : '15 kg',
              length: inch ? '20 in' : '500 mm',
              distance: inch ? '12 in' : '300 mm',
              source: t.toBeStated,
            })
          }
        >
          {t.addAnodes}
        </button>
      </FieldGroup>
    );
  return (
    <FieldGroup title={t.anodes}>
      <ChoiceField path={[...path, 'alloy']} {...fieldTexts('alloy')} choices={choicesOf(t.alloys)} />
      <ChoiceField path={[...path, 'form']} {...fieldTexts('anodeForm')} choices={choicesOf(t.forms)} />
      <NumberField path={[...path, 'count']} {...fieldTexts('anodeCount')} />
      <QuantityField path={[...path, 'mass']} kind="mass" {...fieldTexts('anodeMass')} />
      <QuantityField path={[...path, 'length']} kind="length" {...fieldTexts('anodeLength')} />
      {form === 'flush' ? (
        <QuantityField path={[...path, 'width']} kind="length" {...fieldTexts('anodeWidth')} />
      ) : (
        <>
          <QuantityField path={[...path, 'distance']} kind="length" {...fieldTexts('anodeDistance')} />
          <QuantityField path={[...path, 'core']} kind="length" {...fieldTexts('anodeCore')} optional />
        </>
      )}
      <TextField path={[...path, 'source']} {...fieldTexts('source')} />
      <TableField
        path={[...path, 'places']}
        title={t.places}
        columns={[
          { key: 'x', title: 'x' },
          { key: 'y', title: 'y' },
        ]}
        blank={{ x: inch ? '0 in' : '0 mm', y: inch ? '0 in' : '0 mm' }}
      />
      <button type="button" className="plain small" onClick={field.clear}>
        {t.noAnodes}
      </button>
    </FieldGroup>
  );
}

function AsBuilt() {
  const path = ['durability', 'asBuilt'] as const;
  const field = useField(path);
  const weighed = useField([...path, 'weighed']);
  const option = useField(['chosen']).raw;
  const inch = useField(['units']).raw === 'inch';
  if (field.raw === undefined)
    return (
      <FieldGroup title={t.asBuilt}>
        <button type="button" onClick={() => field.set({ option: typeof option === 'string' ? option : null })}>
          {t.addRecord}
        </button>
      </FieldGroup>
    );
  return (
    <FieldGroup title={t.asBuilt}>
      {weighed.raw === undefined ? (
        <button
          type="button"
          className="plain small"
          onClick={() => weighed.set({ mass: inch ? '1000 lbm' : '500 kg', source: t.toBeStated })}
        >
          {t.addWeighed}
        </button>
      ) : (
        <>
          <QuantityField path={[...path, 'weighed', 'mass']} kind="mass" {...fieldTexts('weighedMass')} />
          <QuantityField path={[...path, 'weighed', 'x']} kind="length" {...fieldTexts('weighedX')} optional />
          <QuantityField path={[...path, 'weighed', 'y']} kind="length" {...fieldTexts('weighedY')} optional />
          <TextField path={[...path, 'weighed', 'source']} {...fieldTexts('source')} />
        </>
      )}
      <TableField
        path={[...path, 'certificates']}
        title={t.certificates}
        columns={[
          { key: 'part', title: t.part },
          { key: 'proofLoad', title: t.proofLoad },
          { key: 'workingLoad', title: t.workingLoad },
          { key: 'certificate', title: t.certificate },
          { key: 'date', title: t.date },
        ]}
        blank={{ part: '', proofLoad: '', workingLoad: '', certificate: '', date: '' }}
      />
      <TableField
        path={[...path, 'torques']}
        title={t.torques}
        columns={[
          { key: 'panel', title: t.panel },
          { key: 'torque', title: t.torque },
          { key: 'bolts', title: t.bolts, number: true },
          { key: 'tool', title: t.tool },
        ]}
        blank={{ panel: '', torque: '', bolts: 1, tool: '' }}
      />
      <TableField
        path={[...path, 'continuity']}
        title={t.continuity}
        columns={[
          { key: 'from', title: t.from },
          { key: 'to', title: t.to },
          { key: 'resistance', title: t.resistance },
        ]}
        blank={{ from: '', to: '', resistance: '' }}
      />
    </FieldGroup>
  );
}
