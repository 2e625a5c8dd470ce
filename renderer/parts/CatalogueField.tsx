import { useId } from 'react';
import type { FieldPath } from '../../core/document/edit.ts';
import { none } from '../state/none.ts';
import { useField } from '../state/use-field.ts';
import { useWorkbench } from '../state/workbench.ts';
import { FieldFrame } from './FieldFrame.tsx';
import { useTyped } from './use-typed.ts';

/** A row of the catalogue by its id, with proposals while typing; any id may be typed, the document says if there is none such. */
export function CatalogueField({
  path,
  label,
  help,
  rows,
  optional = false,
}: {
  path: FieldPath;
  label: string;
  help?: string;
  rows: readonly string[];
  optional?: boolean;
}) {
  const list = useId();
  const field = useField(path);
  const held = typeof field.raw === 'string' ? field.raw : '';
  const { typed, control } = useTyped(held, (text) => (text === '' && optional ? field.clear() : field.set(text)));
  // The catalogue knows the id that it lacks, not the field that asks for it.
  const unknown = useWorkbench(({ document }) => document?.faults ?? none).find(
    ({ where }) => where && !('path' in where) && held !== '' && Object.values(where).includes(held),
  );
  const words = typed.toLowerCase().split(/\s+/);
  // Fifteen hundred sections would choke the list: those that hold every word typed, a hundred at most.
  const near = rows.filter((row) => words.every((word) => row.toLowerCase().includes(word)));
  const proposals = (typed === held || near.length === 0 ? rows : near).slice(0, 100);
  return (
    <FieldFrame
      label={label}
      help={help}
      fault={field.fault ?? unknown ?? null}
      differs={field.differs}
      onReset={field.clear}
    >
      {(frame) => (
        <>
          <input
            type="text"
            className="name"
            list={list}
            spellCheck={false}
            autoComplete="off"
            {...frame}
            {...control}
          />
          <datalist id={list}>
            {proposals.map((row) => (
              <option key={row} value={row} />
            ))}
          </datalist>
        </>
      )}
    </FieldFrame>
  );
}
