import { catalogueWith } from '../../core/catalogue/catalogue.ts';
import { placeData } from '../../core/document/bolt-places.ts';
import type { FieldPath, Json } from '../../core/document/edit.ts';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { userRows } from '../../core/document/user-rows.ts';
import { placesOfLines, type WrittenPlace } from '../../core/geometry/places-of-lines.ts';
import { Refusal } from '../../core/refusal.ts';
import { CatalogueField } from '../parts/CatalogueField.tsx';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { asChoices } from '../parts/choices.ts';
import { DesignPicker } from '../parts/DesignPicker.tsx';
import { FieldFrame } from '../parts/FieldFrame.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { PlaceChecks } from '../parts/PlaceChecks.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { SwitchField } from '../parts/SwitchField.tsx';
import { TableField, type TableColumn } from '../parts/TableField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useDesigns } from '../state/use-designs.ts';
import { useField } from '../state/use-field.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';

/** How panels are held: bolts that can be taken out, or welds. */
export function FixingsSheet() {
  const { names, shown, show } = useDesigns();
  return (
    <>
      <DesignPicker names={names} shown={shown} onShow={show} />
      {shown === null ? <p className="quiet">{texts.panels.noDesign}</p> : <FixingFields key={shown} design={shown} />}
      <PlaceChecks kinds={['bay', 'panel']} ids={(id) => id.startsWith('bolt-') || id.startsWith('weld-')} />
    </>
  );
}

function FixingFields({ design }: { design: string }) {
  const at = (...rest: string[]): FieldPath => ['designs', design, 'fixing', ...rest];
  const fixing = useField(at());
  const inch = useField(['units']).raw === 'inch';
  const kind = (fixing.raw as { kind?: unknown } | undefined)?.kind;
  return (
    <>
      <FieldGroup title={texts.groups.fixing}>
        <div className="field">
          <span>{texts.fields.fixingKind[0]}</span>
          <div className="entry" role="group" aria-label={texts.fields.fixingKind[0]}>
            {(['bolted', 'welded'] as const).map((each) => (
              <button
                key={each}
                type="button"
                aria-pressed={kind === each}
                onClick={() => kind !== each && fixing.set(firstOf(each, inch))}
              >
                {texts.fixings[each]}
              </button>
            ))}
          </div>
          {fixing.fault && <p className="fault">{`${fixing.fault.what}. ${fixing.fault.mend}`}</p>}
        </div>
      </FieldGroup>
      {kind === 'bolted' && <BoltFields at={at} design={design} />}
      {kind === 'welded' && <WeldFields at={at} />}
    </>
  );
}

/** What a fixing begins with when its kind is changed; each value is there to be changed. */
function firstOf(kind: 'bolted' | 'welded', inch: boolean): Json {
  return kind === 'bolted'
    ? {
        kind,
        bolt: inch ? '1/2 in' : 'M12',
        class: inch ? 'ASTM A325' : '8.8',
        ...firstLines(inch),
        shear: 'slip-resistant',
        slipFactor: { value: 0.2, source: 'assumed, to be proved on the coated surface' },
        into: 'through-bolt with sleeve',
      }
    : { kind, throat: inch ? '1/8 in' : '3 mm', pattern: 'all round' };
}

type At = (...rest: string[]) => FieldPath;

function BoltFields({ at, design }: { at: At; design: string }) {
  const choices = useWorkbench((state) => state.choices);
  const shear = useField(at('shear')).raw;
  const hole = useField(at('hole')).raw;
  return (
    <FieldGroup title={texts.groups.bolts}>
      <CatalogueField path={at('bolt')} {...fieldTexts('bolt')} rows={choices?.bolts ?? []} />
      <CatalogueField path={at('class')} {...fieldTexts('class')} rows={choices?.classes ?? []} />
      <PatternFields at={at} design={design} />
      <ChoiceField
        path={at('hole')}
        {...fieldTexts('hole')}
        choices={asChoices(['fine', 'medium', 'normal', 'oversize', 'short slot', 'long slot'])}
        none={texts.byDefault('normal')}
      />
      {(hole === 'short slot' || hole === 'long slot') && <SlotFields at={at} />}
      <ChoiceField
        path={at('shear')}
        {...fieldTexts('shear')}
        choices={asChoices(['slip-resistant', 'fitted', 'clearance'])}
      />
      {shear === 'slip-resistant' && (
        <>
          <NumberField path={at('slipFactor', 'value')} {...fieldTexts('slipFactor')} />
          <TextField path={at('slipFactor', 'source')} {...fieldTexts('source')} />
        </>
      )}
      <ChoiceField
        path={at('into')}
        {...fieldTexts('into')}
        choices={asChoices(['through-bolt with sleeve', 'one-sided', 'welded stud', 'tapped pad', 'clamp'])}
      />
      <HoldFields at={at} />
      <PreloadFields at={at} />
      <TighteningFields at={at} />
      <TextField path={at('locking')} {...fieldTexts('locking')} optional />
      <TextField path={at('hardnessLimit')} {...fieldTexts('hardnessLimit')} optional />
      <SwitchField path={at('threadsInShearPlane')} {...fieldTexts('threads')} standard />
      <SwitchField path={at('countersunk')} {...fieldTexts('countersunk')} />
    </FieldGroup>
  );
}

/** Bolts in lines, or on listed places: each begins with where the bolts are. */
function PatternFields({ at, design }: { at: At; design: string }) {
  const fixing = useField(at());
  const inch = useField(['units']).raw === 'inch';
  const laid = useWorkbench(({ document }) => document?.laid);
  const raw = fixing.raw as Readonly<Record<string, Json>>;
  const isListed = raw['places'] !== undefined && raw['places'] !== null;
  const { pitch: _, edgeDistance: __, places: ___, ...rest } = raw;
  const toLines = () => fixing.set({ ...rest, ...firstLines(inch) });
  const toList = () => fixing.set({ ...rest, places: firstPlaces(laid, design, inch) as unknown as Json });
  return (
    <>
      <div className="field">
        <span>{texts.fields.boltPattern[0]}</span>
        <div className="entry" role="group" aria-label={texts.fields.boltPattern[0]}>
          <button type="button" aria-pressed={!isListed} onClick={() => isListed && toLines()}>
            {texts.fixings.inLines}
          </button>
          <button type="button" aria-pressed={isListed} onClick={() => !isListed && toList()}>
            {texts.fixings.listed}
          </button>
        </div>
      </div>
      {isListed ? (
        <>
          <p className="quiet small">{texts.fixings.listedHow}</p>
          <TableField
            path={at('places')}
            title={texts.fixings.places}
            columns={placeColumns}
            numbered
            blank={{ x: inch ? '1 in' : '25 mm', y: inch ? '1 in' : '25 mm', from: placeData[0] }}
          />
        </>
      ) : (
        <>
          <QuantityField path={at('pitch')} kind="length" {...fieldTexts('pitch')} />
          <QuantityField path={at('edgeDistance')} kind="length" {...fieldTexts('edgeDistance')} />
        </>
      )}
    </>
  );
}

const placeColumns: readonly TableColumn[] = [
  { key: 'x', title: 'x' },
  { key: 'y', title: 'y' },
  { key: 'from', title: texts.fixings.measuredFrom, choices: placeData },
];

const firstLines = (inch: boolean) => ({ pitch: inch ? '3 in' : '80 mm', edgeDistance: inch ? '3/4 in' : '20 mm' });

/** Where the design's bolts are now; its four corners where that cannot be told. */
function firstPlaces(laid: RawDocument | undefined, design: string, inch: boolean): readonly WrittenPlace[] {
  try {
    const document = laid && readDocument(laid);
    const now = document && placesOfLines(document, catalogueWith(userRows(document)), design);
    if (now) return now;
  } catch (error) {
    // A document with faults has no geometry; what is wrong is said at its fields.
    if (!(error instanceof Refusal)) throw error;
  }
  const e = firstLines(inch).edgeDistance;
  return placeData.filter((from) => from !== 'centre').map((from) => ({ x: e, y: e, from }));
}

function SlotFields({ at }: { at: At }) {
  const washer = useField(at('plateWasher')).raw;
  const stated = washer !== undefined && washer !== null;
  return (
    <>
      <ChoiceField
        path={at('slot')}
        {...fieldTexts('slot')}
        choices={asChoices(['along the edge', 'across the edge'])}
        none={texts.byDefault('along the edge')}
      />
      <QuantityField
        path={at('plateWasher', 'width')}
        kind="length"
        {...fieldTexts('plateWasher')}
        optional={!stated}
      />
      {stated && (
        <QuantityField path={at('plateWasher', 'thickness')} kind="length" {...fieldTexts('plateWasherThickness')} />
      )}
    </>
  );
}

/** What the way into the tube needs to be judged. */
function HoldFields({ at }: { at: At }) {
  const choices = useWorkbench((state) => state.choices);
  const into = useField(at('into')).raw;
  switch (into) {
    case 'through-bolt with sleeve':
      return <SleeveFields at={at} />;
    case 'one-sided':
      return (
        <>
          <QuantityField path={at('oneSided', 'tension')} kind="force" {...fieldTexts('makerTension')} />
          <QuantityField path={at('oneSided', 'shear')} kind="force" {...fieldTexts('makerShear')} />
          <TextField path={at('oneSided', 'source')} {...fieldTexts('source')} />
        </>
      );
    case 'welded stud':
      return <TextField path={at('stud', 'procedure')} {...fieldTexts('studProcedure')} />;
    case 'tapped pad':
      return (
        <>
          <CatalogueField
            path={at('pad', 'material')}
            {...fieldTexts('padMaterial')}
            rows={(choices?.materials ?? []).map(({ id }) => id)}
          />
          <QuantityField path={at('pad', 'thickness')} kind="length" {...fieldTexts('padThickness')} />
          <QuantityField path={at('pad', 'width')} kind="length" {...fieldTexts('padWidth')} />
          <QuantityField path={at('pad', 'throat')} kind="length" {...fieldTexts('padThroat')} />
        </>
      );
    case 'clamp':
      return (
        <>
          <NumberField path={at('clamp', 'friction', 'value')} {...fieldTexts('clampFriction')} />
          <TextField path={at('clamp', 'friction', 'source')} {...fieldTexts('source')} />
        </>
      );
    default:
      return null;
  }
}

/** Size of the crush sleeve; both or none. */
function SleeveFields({ at }: { at: At }) {
  const sleeve = useField(at('sleeve')).raw;
  const stated = sleeve !== undefined && sleeve !== null;
  return (
    <>
      <QuantityField path={at('sleeve', 'bore')} kind="length" {...fieldTexts('sleeveBore')} optional={!stated} />
      {stated && <QuantityField path={at('sleeve', 'outer')} kind="length" {...fieldTexts('sleeveOuter')} />}
    </>
  );
}

/** Preload as it is stated: as a part of the bolt's strength, as a force, or not at all. */
function PreloadFields({ at }: { at: At }) {
  const field = useField(at('preload'));
  const given = typeof field.raw === 'object' && field.raw !== null ? ('force' in field.raw ? 'force' : 'ofStrength') : ''; // prettier-ignore
  return (
    <>
      <FieldFrame {...fieldTexts('preload')} fault={field.fault} differs={field.differs} onReset={field.clear}>
        {(frame) => (
          <select
            {...frame}
            value={given}
            onChange={({ target: { value } }) =>
              value === '' ? field.clear() : field.set(firstPreload[value as keyof typeof firstPreload])
            }
          >
            <option value="">{texts.fixing.noPreload}</option>
            <option value="ofStrength">{texts.fixing.preloadOfStrength}</option>
            <option value="force">{texts.fixing.preloadForce}</option>
          </select>
        )}
      </FieldFrame>
      {given === 'force' && (
        <QuantityField path={at('preload', 'force')} kind="force" {...fieldTexts('preloadForce')} />
      )}
      {given === 'ofStrength' && (
        <NumberField path={at('preload', 'ofStrength')} {...fieldTexts('preloadOfStrength')} />
      )}
      {given !== '' && <TextField path={at('preload', 'source')} {...fieldTexts('source')} />}
    </>
  );
}
const firstPreload = {
  ofStrength: { ofStrength: 0.7, source: texts.fixing.toBeStated },
  force: { force: '30 kN', source: texts.fixing.toBeStated },
};

function TighteningFields({ at }: { at: At }) {
  const tightening = useField(at('tightening')).raw;
  const stated = tightening !== undefined && tightening !== null;
  return (
    <>
      <QuantityField path={at('tightening', 'torque')} kind="moment" {...fieldTexts('torque')} optional={!stated} />
      {stated && (
        <>
          <NumberField path={at('tightening', 'k', 'low')} {...fieldTexts('kLow')} />
          <NumberField path={at('tightening', 'k', 'high')} {...fieldTexts('kHigh')} />
          <TextField path={at('tightening', 'k', 'source')} {...fieldTexts('source')} />
          <NumberField path={at('tightening', 'coatingLoss', 'value')} {...fieldTexts('coatingLoss')} />
          <TextField path={at('tightening', 'coatingLoss', 'source')} {...fieldTexts('source')} />
          <NumberField path={at('tightening', 'kept', 'value')} {...fieldTexts('preloadKept')} />
          <TextField path={at('tightening', 'kept', 'source')} {...fieldTexts('source')} />
        </>
      )}
    </>
  );
}

function WeldFields({ at }: { at: At }) {
  const choices = useWorkbench((state) => state.choices);
  const pattern = useField(at('pattern')).raw;
  const cornerThroat = useField(at('cornerThroat')).raw;
  return (
    <FieldGroup title={texts.groups.weld}>
      <QuantityField path={at('throat')} kind="length" {...fieldTexts('throat')} />
      <ChoiceField
        path={at('pattern')}
        {...fieldTexts('pattern')}
        choices={asChoices(['all round', 'two sides', 'intermittent'])}
      />
      {pattern === 'intermittent' && (
        <>
          <QuantityField path={at('run')} kind="length" {...fieldTexts('run')} />
          <QuantityField path={at('gap')} kind="length" {...fieldTexts('gap')} />
        </>
      )}
      <PlugFields at={at} />
      <QuantityField path={at('endReturn')} kind="length" {...fieldTexts('endReturn')} optional />
      <QuantityField
        path={at('cornerThroat', 'value')}
        kind="length"
        {...fieldTexts('cornerThroat')}
        optional={cornerThroat === undefined || cornerThroat === null}
      />
      {cornerThroat !== undefined && cornerThroat !== null && (
        <TextField path={at('cornerThroat', 'source')} {...fieldTexts('source')} />
      )}
      <CatalogueField path={at('metal')} {...fieldTexts('metal')} rows={choices?.weldMetals ?? []} optional />
      <ChoiceField
        path={at('method')}
        {...fieldTexts('method')}
        choices={asChoices(['directional', 'throat'])}
        none={texts.byDefault('directional')}
      />
    </FieldGroup>
  );
}

/** Plug welds beside the weld of the edge; left out where no diameter is stated. */
function PlugFields({ at }: { at: At }) {
  const plugs = useField(at('plugs')).raw;
  const stated = plugs !== undefined && plugs !== null;
  return (
    <>
      <QuantityField path={at('plugs', 'diameter')} kind="length" {...fieldTexts('plugDiameter')} optional={!stated} />
      {stated && (
        <>
          <QuantityField path={at('plugs', 'pitch')} kind="length" {...fieldTexts('plugPitch')} />
          <QuantityField path={at('plugs', 'edgeDistance')} kind="length" {...fieldTexts('plugEdge')} />
        </>
      )}
    </>
  );
}
