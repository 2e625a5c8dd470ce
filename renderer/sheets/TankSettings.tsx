import type { FieldPath, Json } from '../../core/document/edit.ts';
import type { RecordHead } from '../../core/engine/record-messages.ts';
import { tankSketch } from '../../core/note/tank-sketch.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { FieldFrame } from '../parts/FieldFrame.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { FigureView } from '../parts/FigureView.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { useField } from '../state/use-field.ts';
import { texts } from '../texts.ts';
import { ColumnField } from './ColumnField.tsx';

const t = texts.tank;
/** What stands for leaving a choice out is not offered twice. */
const choicesOf = (words: Readonly<Record<string, string>>, leftOut: string) =>
  Object.entries(words).flatMap(([value, title]) => (value === leftOut ? [] : [{ value, title }]));

/** How a test's file is read, what is done to its readings, and what hung in the tank. */
export function TankSettings({ index, columns }: { index: number; columns: RecordHead['columns'] }) {
  const at = (...rest: string[]): FieldPath => ['tests', 'tank', index, ...rest];
  return (
    <>
      <TextField path={at('title')} {...fieldTexts('testTitle')} />
      <FieldGroup title={t.readingGroup}>
        {(['time', 'travel', 'force'] as const).map((name) => (
          <div key={name} className="tank-channel">
            <ColumnField path={at('reading', name)} label={t.columns[name]} columns={columns} />
            <TextField path={at('reading', `${name}Unit`)} label={t.units[name]} optional />
          </div>
        ))}
        <ChoiceField path={at('reading', 'travelUp')} {...fieldTexts('travelUp')} choices={choicesOf(t.ways, 'up')} none={t.ways.up} />
        <ChoiceField path={at('reading', 'forcePositive')} {...fieldTexts('forcePositive')} choices={choicesOf(t.pulls, 'pulls')} none={t.pulls.pulls} />
        <figure className="tank-sketch">
          <FigureView figure={tankSketch} width={420} />
          <figcaption>{tankSketch.caption}</figcaption>
        </figure>
      </FieldGroup>
      <FieldGroup title={t.conditioningGroup}>
        <QuantityField path={at('conditioning', 'from')} kind="time" {...fieldTexts('trimFrom')} optional />
        <QuantityField path={at('conditioning', 'to')} kind="time" {...fieldTexts('trimTo')} optional />
        <NumberField path={at('conditioning', 'travelFactor')} {...fieldTexts('travelFactor')} optional />
        <NumberField path={at('conditioning', 'forceFactor')} {...fieldTexts('forceFactor')} optional />
        <QuantityField path={at('conditioning', 'forceZero')} kind="force" {...fieldTexts('forceZero')} optional />
        <QuantityField path={at('conditioning', 'forceLate')} kind="time" {...fieldTexts('forceLate')} optional />
        <TextField path={at('conditioning', 'source')} {...fieldTexts('conditioningSource')} optional />
      </FieldGroup>
      <FieldGroup title={t.setupGroup}>
        <QuantityField path={at('setup', 'mass')} kind="mass" {...fieldTexts('testMass')} />
        <QuantityField path={at('setup', 'volume')} kind="volume" {...fieldTexts('testVolume')} />
        <QuantityField path={at('setup', 'area')} kind="area" {...fieldTexts('testArea')} />
        <QuantityField path={at('setup', 'density')} kind="density" {...fieldTexts('testDensity')} />
        <QuantityField path={at('setup', 'width')} kind="length" {...fieldTexts('testWidth')} optional />
        <QuantityField path={at('setup', 'waterInside')} kind="volume" {...fieldTexts('testWaterInside')} optional />
        <QuantityField path={at('setup', 'rigMass')} kind="mass" {...fieldTexts('rigMass')} optional />
        <QuantityField path={at('setup', 'stiffness')} kind="stiffness" {...fieldTexts('rigStiffness')} optional />
        <QuantityField path={at('setup', 'tankWidth')} kind="length" {...fieldTexts('tankWidth')} optional />
        <QuantityField path={at('setup', 'tankLength')} kind="length" {...fieldTexts('tankLength')} optional />
        <QuantityField path={at('setup', 'plateDepth')} kind="length" {...fieldTexts('tankDepth')} optional />
        <QuantityField path={at('setup', 'aboveFloor')} kind="length" {...fieldTexts('aboveFloor')} optional />
        <NumberField path={at('setup', 'scale')} {...fieldTexts('modelScale')} optional />
      </FieldGroup>
      <FieldGroup title={t.modelGroup}>
        <QuantityField path={at('setup', 'delayBound')} kind="time" {...fieldTexts('delayBound')} optional />
        <AlsoField path={at('setup', 'also')} />
        <NumberField path={at('setup', 'harmonics')} {...fieldTexts('harmonics')} optional />
      </FieldGroup>
    </>
  );
} // prettier-ignore

/** Unknowns that the fit may have beside added mass, drag and zero. */
function AlsoField({ path }: { path: FieldPath }) {
  const field = useField(path);
  const held: readonly Json[] = Array.isArray(field.raw) ? (field.raw as Json[]) : [];
  return (
    <>
      {Object.entries(t.also).map(([name, title]) => (
        <FieldFrame key={name} label={title} fault={name === 'delay' ? field.fault : null}>
          {(frame) => (
            <input
              type="checkbox"
              {...frame}
              checked={held.includes(name)}
              onChange={({ target }) =>
                field.set(target.checked ? [...held, name] : held.filter((other) => other !== name))
              }
            />
          )}
        </FieldFrame>
      ))}
    </>
  );
}
