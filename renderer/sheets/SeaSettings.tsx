import type { FieldPath } from '../../core/document/edit.ts';
import type { RecordHead } from '../../core/engine/record-messages.ts';
import { ChoiceField } from '../parts/ChoiceField.tsx';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { fieldTexts } from '../parts/field-texts.ts';
import { FigureView } from '../parts/FigureView.tsx';
import { NumberField } from '../parts/NumberField.tsx';
import { QuantityField } from '../parts/QuantityField.tsx';
import { TextField } from '../parts/TextField.tsx';
import { seaSketch } from '../../core/note/sea-sketch.ts';
import { texts } from '../texts.ts';
import { ColumnField } from './ColumnField.tsx';

const t = texts.sea;
type Columns = RecordHead['columns'];
/** What stands for leaving a choice out is not offered twice. */
const choicesOf = (words: Readonly<Record<string, string>>, leftOut?: string) =>
  Object.entries(words).flatMap(([value, title]) => (value === leftOut ? [] : [{ value, title }]));
const channels = Object.keys(t.channels) as readonly (keyof typeof t.channels)[];

/** How a deployment's files are read, and what is known of sensors, line and water. */
export function SeaSettings({ index, columns, other }: { index: number; columns: Columns; other: Columns | null }) {
  const at = (...rest: string[]): FieldPath => ['tests', 'sea', index, ...rest];
  const quantity = (name: keyof typeof texts.fields, field: string, kind: Parameters<typeof QuantityField>[0]['kind']) => (
    <QuantityField path={at('setup', field)} kind={kind} {...fieldTexts(name)} optional />
  );
  return (
    <>
      <TextField path={at('title')} {...fieldTexts('testTitle')} />
      <FieldGroup title={t.readingGroup}>
        <details>
          <summary>{t.columns}</summary>
          <ChannelFields at={(...rest) => at('reading', ...rest)} columns={columns} />
        </details>
        <ChoiceField path={at('reading', 'accelerationUp')} {...fieldTexts('accelerationUp')} choices={choicesOf(t.ways, 'up')} none={t.ways.up} />
        <ChoiceField path={at('reading', 'strokeGrows')} {...fieldTexts('strokeGrows')} choices={choicesOf(t.grows, 'away')} none={t.grows.away} />
        <ChoiceField path={at('setup', 'axes')} {...fieldTexts('seaAxes')} choices={choicesOf(t.axes, 'vertical')} none={t.axes.vertical} />
        <figure className="tank-sketch">
          <FigureView figure={seaSketch} width={420} />
          <figcaption>{seaSketch.caption}</figcaption>
        </figure>
      </FieldGroup>
      {other && (
        <FieldGroup title={t.secondGroup}>
          <QuantityField path={at('second', 'late')} kind="time" {...fieldTexts('secondLate')} optional />
          <QuantityField path={at('second', 'lateAtEnd')} kind="time" {...fieldTexts('secondLateAtEnd')} optional />
          <details>
            <summary>{t.columns}</summary>
            <ChannelFields at={(...rest) => at('second', 'reading', ...rest)} columns={other} />
          </details>
        </FieldGroup>
      )}
      <FieldGroup title={t.sensorGroup}>
        <QuantityField path={at('setup', 'highPass')} kind="time" {...fieldTexts('seaHighPass')} />
        {quantity('accelerationNoise', 'accelerationNoise', 'acceleration')}
        {quantity('strokeNoise', 'strokeNoise', 'length')}
        {quantity('forceNoise', 'forceNoise', 'force')}
        {quantity('plateNoise', 'plateNoise', 'acceleration')}
        {quantity('pressureNoise', 'pressureNoise', 'stress')}
        {quantity('seaClock', 'clock', 'time')}
        <NumberField path={at('setup', 'scaleError')} {...fieldTexts('scaleError')} optional />
      </FieldGroup>
      <FieldGroup title={t.lineGroup}>
        {quantity('seaStiffness', 'stiffness', 'stiffness')}
        {quantity('lineLength', 'lineLength', 'length')}
        {quantity('seaArm', 'arm', 'length')}
        {quantity('seaPlateDepth', 'plateDepth', 'length')}
        {quantity('seaBed', 'waterDepth', 'length')}
        {quantity('seaDensity', 'density', 'density')}
        <NumberField path={at('setup', 'waveError')} {...fieldTexts('waveError')} optional />
      </FieldGroup>
      <FieldGroup title={t.askedGroup}>
        {quantity('stillLimit', 'limit', 'length')}
        <ChoiceField path={at('setup', 'by')} {...fieldTexts('plateWay')} choices={choicesOf(t.by)} none={t.surest} />
      </FieldGroup>
    </>
  );
} // prettier-ignore

/** A column and a unit for each channel that a file may carry; left out, they are found by name. */
function ChannelFields({ at, columns }: { at: (...rest: string[]) => FieldPath; columns: Columns }) {
  return channels.map((name) => (
    <div key={name} className="tank-channel">
      <ColumnField path={at(name, 'column')} label={t.channels[name]} columns={columns} />
      <TextField path={at(name, 'unit')} label={t.unit} optional />
    </div>
  ));
}
