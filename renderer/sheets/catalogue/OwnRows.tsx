import type { FieldPath, Json } from '../../../core/document/edit.ts';
import { listOfKind } from '../../../core/document/row-like.ts';
import type { UserRowKind } from '../../../core/document/user-rows.ts';
import { valueOf } from '../../../core/host/answer.ts';
import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { FieldList } from '../../parts/FieldList.tsx';
import { OptionalPart } from '../../parts/OptionalPart.tsx';
import { TableField } from '../../parts/TableField.tsx';
import { said } from '../../state/said.ts';
import { useSession } from '../../state/session-context.ts';
import { useField } from '../../state/use-field.ts';
import { notify, useWorkbench } from '../../state/workbench.ts';
import { texts } from '../../texts.ts';
import { across, fieldsOf, heatAffected, nominal, source } from './catalogue-fields.ts';
import { additionOf, useKept } from './kept-rows.ts';
import { idOf, ownRowsOf, placeOf, rowKinds, type OwnRow } from './own-rows.ts';

const t = texts.catalogue;

/** Rows that the document adds to the catalogue, each with its fields. */
export function OwnRows() {
  const laid = useWorkbench(({ document }) => document?.laid);
  const all = rowKinds.flatMap((kind) => ownRowsOf(laid, kind).map((row, at) => ({ kind, row, at })));
  return (
    <FieldGroup title={t.own}>
      {all.length === 0 && <p className="quiet">{t.noOwn}</p>}
      {all.map(({ kind, row, at }) => (
        <div key={`${kind} ${at}`} data-own-row={placeOf(kind, idOf(row))}>
          <OwnRowFields kind={kind} row={row} at={at} />
        </div>
      ))}
    </FieldGroup>
  );
}

function OwnRowFields({ kind, row, at }: { kind: UserRowKind; row: OwnRow; at: number }) {
  const session = useSession();
  const path: FieldPath = ['catalogue', listOfKind[kind], at];
  const field = useField(path);
  const id = idOf(row);
  const keep = () =>
    void said(async () => {
      valueOf(await session.host.keepCatalogueAddition(additionOf(kind, row)));
      await useKept.getState().refresh(session.host);
      notify('plain', { what: t.keptNow(id), mend: t.keptNowMend });
    });
  return (
    <FieldGroup title={t.row(t.kinds[kind], id)}>
      <FieldList path={path} of={fieldsOf(kind)} />
      {kind === 'stockPlate' && (
        <TableField
          path={[...path, 'sheets']}
          title={t.sheets}
          columns={[
            { key: 'width', title: t.sheetWidth },
            { key: 'length', title: t.sheetLength },
          ]}
          blank={{ width: '1500 mm', length: '3000 mm' }}
        />
      )}
      {kind === 'material' && <PartsOfMaterial path={path} row={row} />}
      {kind === 'boltClass' && (
        <OptionalPart
          path={[...path, 'nominal']}
          title={t.nominal}
          add={t.addNominal}
          remove={t.removeNominal}
          of={nominal}
          first={{ tension: '', shearThreads: '', shearShank: '' }}
        />
      )}
      <SourceOfRow path={[...path, 'source']} />
      <div className="acts">
        <button type="button" onClick={keep}>
          {t.keep}
        </button>
        <button type="button" className="link small" onClick={field.clear}>
          {t.remove}
        </button>
      </div>
    </FieldGroup>
  );
}

/** What only an aluminium or only a laminate has; shown elsewhere too where it stands there, to be taken out. */
function PartsOfMaterial({ path, row }: { path: FieldPath; row: OwnRow }) {
  return (
    <>
      {(row['family'] === 'aluminium' || row['heatAffected'] !== undefined) && (
        <OptionalPart
          path={[...path, 'heatAffected']}
          title={t.heatAffected}
          add={t.addHeatAffected}
          remove={t.removeHeatAffected}
          of={heatAffected}
          first={{ yield: row['yieldStrength'] ?? '', ultimate: row['ultimateStrength'] ?? '' }}
        />
      )}
      {(row['family'] === 'laminate' || row['across'] !== undefined) && (
        <OptionalPart
          path={[...path, 'across']}
          title={t.across}
          add={t.addAcross}
          remove={t.removeAcross}
          of={across}
          first={{ youngModulus: row['youngModulus'] ?? '', ultimate: row['ultimateStrength'] ?? '' }}
        />
      )}
    </>
  );
}

/** Where a row's numbers come from; null says that there is no source. */
function SourceOfRow({ path }: { path: FieldPath }) {
  const field = useField(path);
  const noSource: Json = null;
  if (field.raw === null || field.raw === undefined)
    return (
      <FieldGroup title={t.source}>
        <p className="tone-loud">{t.noSource}</p>
        <button type="button" onClick={() => field.set({ document: '' })}>
          {t.addSource}
        </button>
      </FieldGroup>
    );
  return (
    <FieldGroup title={t.source}>
      <FieldList path={path} of={source} />
      <button type="button" className="link small" onClick={() => field.set(noSource)}>
        {t.removeSource}
      </button>
    </FieldGroup>
  );
}
