import type { FieldPath, Json } from '../../core/document/edit.ts';
import { scatterField, spectrumField } from '../../core/hydrodynamics/sea-files.ts';
import { textOfRecord } from '../../core/record/text-of-record.ts';
import { askRecords } from '../engine/record-client.ts';
import { chooseFileBytes } from '../parts/choose-file-bytes.ts';
import { FieldGroup } from '../parts/FieldGroup.tsx';
import { FieldList, type FieldSpec } from '../parts/FieldList.tsx';
import { TableField } from '../parts/TableField.tsx';
import { chosenRecord } from '../state/add-record.ts';
import { said } from '../state/said.ts';
import { useSession } from '../state/session-context.ts';
import { useField } from '../state/use-field.ts';
import { texts } from '../texts.ts';

const t = texts.hydrodynamics;
const accepted = '.csv,.tsv,.txt,.dat,text/csv,text/tab-separated-values,text/plain';
const scatterPath: FieldPath = ['hydrodynamics', 'scatter'];
const scatter: readonly FieldSpec[] = [
  { at: ['period'], takes: ['peak', 'zero-crossing'], label: t.scatterPeriod[0], help: t.scatterPeriod[1] },
  { at: ['duration'], takes: 'time', label: t.stateDuration[0], help: t.stateDuration[1], optional: true },
  { at: ['peakedness'], takes: 'number', label: t.peakedness[0], help: t.peakedness[1], optional: true },
  { at: ['returnPeriod'], takes: 'number', label: t.returnPeriod[0], help: t.returnPeriod[1], optional: true },
  { at: ['source'], takes: 'text', label: t.sourceOf.scatter, help: t.sourceHelp },
];

/** How often which sea comes: typed, pasted or read from a file. */
export function ScatterFields() {
  const field = useField(scatterPath);
  const inch = useField(['units']).raw === 'inch';
  const blank = { height: inch ? '5 ft' : '1.5 m', period: '6 s', count: 1 };
  const take = () =>
    said(async () => {
      const file = await chooseFileBytes(accepted);
      if (file) field.set(scatterField(textOfRecord(file.bytes), file.name));
    });
  return (
    <FieldGroup title={t.scatter}>
      <div className="table-acts">
        <button type="button" onClick={() => void take()}>
          {t.takeScatter}
        </button>
      </div>
      {field.raw === undefined ? (
        <button type="button" onClick={() => field.set({ period: 'peak', states: [blank], source: t.toBeStated })}>
          {t.state(t.scatter)}
        </button>
      ) : (
        <>
          <FieldList path={scatterPath} of={scatter} />
          <TableField
            path={[...scatterPath, 'states']}
            title={t.states}
            columns={[
              { key: 'height', title: t.stateColumns.height },
              { key: 'period', title: t.stateColumns.period },
              { key: 'count', title: t.stateColumns.count, number: true },
            ]}
            blank={blank}
          />
          <button type="button" className="link small" onClick={field.clear}>
            {t.takeOut(t.scatter)}
          </button>
        </>
      )}
    </FieldGroup>
  );
}

/** The sea's own spectrum, in place of a formula's shape. */
export function SpectrumFields() {
  const sea = useField(['hydrodynamics', 'sea']);
  const spectrum = useField(['hydrodynamics', 'sea', 'spectrum']);
  const take = () =>
    said(async () => {
      const file = await chooseFileBytes(accepted);
      if (file) sea.set({ ...(sea.raw as { readonly [key: string]: Json }), ...spectrumField(textOfRecord(file.bytes), file.name) });
    }); // prettier-ignore
  if (sea.raw === undefined) return null;
  const rows = (spectrum.raw as { readonly rows?: readonly unknown[] } | undefined)?.rows?.length;
  return (
    <FieldGroup title={t.spectrum}>
      {rows !== undefined && <p className="quiet">{t.spectrumOf(rows)}</p>}
      <button type="button" onClick={() => void take()}>
        {t.takeSpectrum}
      </button>
      {rows !== undefined && (
        <button type="button" className="link small" onClick={spectrum.clear}>
          {t.takeOut(t.spectrum)}
        </button>
      )}
    </FieldGroup>
  );
}

/** The plate's motion through the water as a logger recorded it. */
export function RecordedMotion() {
  const session = useSession();
  const field = useField(['hydrodynamics', 'recorded']);
  const take = () =>
    said(async () => {
      const chosen = await chosenRecord(session);
      if (chosen) field.set(await askRecords('recorded', { record: chosen.record, source: chosen.record.name }));
    });
  const kept = field.raw as { readonly record?: { readonly name?: string }; readonly largest?: string; readonly period?: string } | undefined; // prettier-ignore
  return (
    <FieldGroup title={t.recorded}>
      {kept !== undefined && <p className="quiet">{t.recordedOf(kept.record?.name ?? '', kept.largest ?? '', kept.period ?? '')}</p>}
      <button type="button" onClick={() => void take()}>
        {t.takeRecord}
      </button>
      {kept !== undefined && (
        <button type="button" className="link small" onClick={field.clear}>
          {t.takeOut(t.recorded)}
        </button>
      )}
    </FieldGroup>
  ); // prettier-ignore
}
