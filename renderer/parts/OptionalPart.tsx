import type { FieldPath, Json } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { FieldGroup } from './FieldGroup.tsx';
import { FieldList, type FieldSpec } from './FieldList.tsx';

/** A part of the document that may be left out: a button that states it, or its fields. */
export function OptionalPart({
  path,
  title,
  add,
  remove,
  of,
  first,
}: {
  path: FieldPath;
  title: string;
  add: string;
  remove: string;
  of: readonly FieldSpec[];
  /** What it begins with. */
  first: Json;
}) {
  const field = useField(path);
  return (
    <FieldGroup title={title}>
      {field.raw === undefined ? (
        <button type="button" onClick={() => field.set(first)}>
          {add}
        </button>
      ) : (
        <>
          <FieldList path={path} of={of} />
          <button type="button" className="link small" onClick={field.clear}>
            {remove}
          </button>
        </>
      )}
    </FieldGroup>
  );
}
