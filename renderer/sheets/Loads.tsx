import type { FieldPath, Json } from '../../core/document/edit.ts';
import type { SituationView } from '../../core/engine/result-view.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { asChoices } from '../parts/choices.ts';
import { FieldFrame } from '../parts/FieldFrame.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { PointsTable } from '../parts/PointsTable.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { none } from '../state/none.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import './loads.css';

/** What acts on the plate, and what balances it. */
export function LoadsSheet() {
  const inch = useField(['units']).raw === 'inch';
  const q = (metric: string, inches: string) => (inch ? inches : metric);
  return (
    <>
      <FieldGroup title={texts.groups.service}>
        <QuantityField path={['loads', 'service', 'force']} kind="force" {...fieldTexts('force')} />
        <ChoiceField
          path={['loads', 'service', 'measure']}
          {...fieldTexts('measure')}
          choices={asChoices(['amplitude', 'range'])}
        />
        <ChoiceField
          path={['loads', 'service', 'level']}
          {...fieldTexts('level')}
          choices={asChoices(['extreme', 'characteristic', 'mean'])}
        />
        <QuantityField path={['loads', 'service', 'returnPeriod']} kind="time" {...fieldTexts('returnPeriod')} />
        <Includes />
        <QuantityField path={['loads', 'service', 'wavePeriod']} kind="time" {...fieldTexts('wavePeriod')} />
        <NumberField path={['loads', 'service', 'cyclesPerYear']} {...fieldTexts('cyclesPerYear')} />
      </FieldGroup>
      <Definition />
      <Optional
        title={texts.groups.shape}
        path={['loads', 'pressureShape']}
        first={{ middleOverMean: 1.5, source: 'assumed' }}
      >
        <NumberField path={['loads', 'pressureShape', 'middleOverMean']} {...fieldTexts('middleOverMean')} />
        <TextField path={['loads', 'pressureShape', 'source']} {...fieldTexts('source')} />
      </Optional>
      <FieldGroup title={texts.groups.panelShares}>
        <ChoiceField
          path={['loads', 'panelShares']}
          {...fieldTexts('panelShares')}
          choices={asChoices(['area, shape and flow'])}
          none="area and shape"
        />
      </FieldGroup>
      <FieldGroup title={texts.groups.water}>
        <QuantityField path={['water', 'depth']} kind="length" {...fieldTexts('depth')} />
        <QuantityField path={['water', 'density']} kind="density" {...fieldTexts('density')} optional />
        <NumberField path={['water', 'salinity']} {...fieldTexts('salinity')} optional />
        <QuantityField path={['water', 'temperature']} kind="temperature" {...fieldTexts('temperature')} optional />
        <QuantityField path={['water', 'latitude']} kind="angle" {...fieldTexts('latitude')} optional />
      </FieldGroup>
      <Optional title={texts.groups.crossing} path={['loads', 'crossing']} first={{ speed: q('0.5 m/s', '1.6 ft/s') }}>
        <QuantityField path={['loads', 'crossing', 'speed']} kind="speed" {...fieldTexts('crossingSpeed')} />
        <OptionalFactor path={['loads', 'crossing', 'slamCoefficient']} name="slamCoefficient" first={5} />
      </Optional>
      <Optional
        title={texts.groups.liftOut}
        path={['loads', 'liftOut']}
        first={{ speed: q('0.2 m/s', '0.65 ft/s'), dragCoefficient: { value: 2.5, source: 'to be stated' } }}
      >
        <QuantityField path={['loads', 'liftOut', 'speed']} kind="speed" {...fieldTexts('liftSpeed')} />
        <NumberField path={['loads', 'liftOut', 'dragCoefficient', 'value']} {...fieldTexts('dragCoefficient')} />
        <TextField path={['loads', 'liftOut', 'dragCoefficient', 'source']} {...fieldTexts('source')} />
        <QuantityField path={['loads', 'liftOut', 'tilt']} kind="angle" {...fieldTexts('tilt')} optional />
        <OptionalFactor path={['loads', 'liftOut', 'dynamicFactor']} name="dynamicFactor" first={1.5} />
      </Optional>
      <Optional title={texts.groups.liftInAir} path={['loads', 'liftInAir']} first={{}}>
        <OptionalFactor path={['loads', 'liftInAir', 'dynamicFactor']} name="dynamicFactor" first={1.5} />
      </Optional>
      <Optional
        title={texts.groups.deck}
        path={['loads', 'deck']}
        first={{
          supports: [
            { id: 'D1', x: q('0 mm', '0 in'), y: q('0 mm', '0 in') },
            { id: 'D2', x: q('1 m', '40 in'), y: q('0 mm', '0 in') },
            { id: 'D3', x: q('0 mm', '0 in'), y: q('1 m', '40 in') },
          ],
          dynamicFactor: { value: 1.3, source: 'to be stated' },
        }}
      >
        <PointsTable path={['loads', 'deck', 'supports']} title={texts.groups.deck} prefix="D" />
        <NumberField path={['loads', 'deck', 'dynamicFactor', 'value']} {...fieldTexts('dynamicFactor')} />
        <TextField path={['loads', 'deck', 'dynamicFactor', 'source']} {...fieldTexts('source')} />
      </Optional>
      <Cases />
    </>
  );
}

/** A part of the loads that may be left out; left out, its case is not judged. */
function Optional({
  title,
  path,
  first,
  children,
}: {
  title: string;
  path: FieldPath;
  first: Json;
  children: React.ReactNode;
}) {
  const field = useField(path);
  return (
    <FieldGroup title={title}>
      {field.raw === undefined ? (
        <p className="quiet">
          {texts.loads.notGiven}{' '}
          <button type="button" onClick={() => field.set(first)}>
            {texts.loads.give}
          </button>
        </p>
      ) : (
        <>
          {children}
          <button type="button" className="plain small" onClick={field.clear}>
            {texts.loads.takeOut}
          </button>
        </>
      )}
    </FieldGroup>
  );
}

/** A factor with its source, or the published rule where none is stated. */
function OptionalFactor({
  path,
  name,
  first,
}: {
  path: FieldPath;
  name: 'slamCoefficient' | 'dynamicFactor';
  first: number;
}) {
  const field = useField(path);
  if (field.raw === undefined)
    return (
      <FieldFrame {...fieldTexts(name)}>
        {(frame) => (
          <button type="button" {...frame} onClick={() => field.set({ value: first, source: 'to be stated' })}>
            {texts.loads.give}
          </button>
        )}
      </FieldFrame>
    );
  return (
    <>
      <NumberField path={[...path, 'value']} {...fieldTexts(name)} />
      <TextField path={[...path, 'source']} {...fieldTexts('source')} />
      <button type="button" className="plain small" onClick={field.clear}>
        {texts.loads.byRule}
      </button>
    </>
  );
}

const parts = ['weight', 'inertia', 'drag', 'current'] as const;

function Includes() {
  const field = useField(['loads', 'service', 'includes']);
  const held = Array.isArray(field.raw) ? (field.raw as readonly string[]) : [];
  return (
    <div className="field">
      <span>{texts.loads.includes}</span>
      <div className="entry" role="group" aria-label={texts.loads.includes}>
        {parts.map((part) => (
          <label key={part} className="tick">
            <input
              type="checkbox"
              checked={held.includes(part)}
              onChange={({ target }) =>
                field.set(parts.filter((other) => (other === part ? target.checked : held.includes(other))))
              }
            />
            {part}
          </label>
        ))}
      </div>
      {field.fault && <p className="fault">{`${field.fault.what}. ${field.fault.mend}`}</p>}
      <p className="help">{texts.loads.includesHelp}</p>
    </div>
  );
}

function Definition() {
  const definition = useWorkbench((state) => state.result?.loadDefinition ?? none);
  return (
    <section>
      <h3>{texts.loads.definition}</h3>
      <ul className="small">
        {definition.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

/** Each case with its force, its path and its equilibrium. */
function Cases() {
  const situations = useWorkbench((state) => state.result?.situations ?? none);
  return (
    <section>
      <h3>{texts.groups.cases}</h3>
      <ul className="cases">
        {situations.map((situation) => (
          <Case key={situation.id} situation={situation} />
        ))}
      </ul>
    </section>
  );
}

function Case({ situation }: { situation: SituationView }) {
  const { title, force, path, terms, residual, balancedBy, missing, loadFactor, acceleration } = situation;
  return (
    <li className={missing ? 'unjudged' : undefined}>
      <strong>{title}</strong>{' '}
      {missing ? (
        <span>
          {texts.verdict['cannot be judged']}: {missing}
        </span>
      ) : (
        <>
          <span>
            {force}, {texts.loads.factor} {loadFactor.toFixed(2)}
          </span>
          <p>{path}</p>
          <p className="quiet small">
            {terms.map(({ name, force: of }) => `${name} ${of}`).join('; ')}; {texts.loads.sum}{' '}
            {residual.toExponential(0)}
            {acceleration ? `; ${acceleration}` : ''}; {texts.loads.balancedBy(balancedBy)}
          </p>
        </>
      )}
    </li>
  );
}
