import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { ChoiceField } from '../../parts/ChoiceField.tsx';
import { FieldList } from '../../parts/FieldList.tsx';
import { TableField } from '../../parts/TableField.tsx';
import { useField } from '../../state/use-field.ts';
import { texts } from '../../texts.ts';
import { way } from './recovery-fields.ts';
import { newWay } from './recovery-starts.ts';

const t = texts.recovery;
const path = ['recovery', 'ways'] as const;
interface Way {
  readonly id: string;
  readonly title: string;
  readonly releases?: readonly string[];
}

/** Which of the ways the checks judge. */
export function ChosenWay() {
  const ways = useField(path).raw;
  return (
    <ChoiceField
      path={['recovery', 'chosen']}
      label={t.chosen[0]}
      help={t.chosen[1]}
      choices={Array.isArray(ways) ? (ways as Way[]).map(({ id, title }) => ({ value: id, title })) : []}
    />
  );
}

/** Ways of getting the plate back: which releases, and what else has to work. */
export function Ways() {
  const field = useField(path);
  const releases = useField(['recovery', 'releases']).raw;
  const known = Array.isArray(releases) ? (releases as { readonly id: string }[]).map(({ id }) => id) : [];
  const all = Array.isArray(field.raw) ? (field.raw as Way[]) : [];
  const next = [1, 2, 3, 4, 5, 6].map((n) => `way ${n}`).find((id) => all.every((one) => one.id !== id));
  return (
    <>
      {all.map(({ id }, i) => (
        <FieldGroup key={id} title={t.way(id)}>
          <FieldList path={[...path, i]} of={way} />
          <LetGoBy at={i} known={known} />
          <p>{t.parts}</p>
          <TableField
            path={[...path, i, 'parts']}
            title={`${t.way(id)}: ${t.parts}`}
            columns={[
              { key: 'name', title: t.part },
              { key: 'fails.value', title: t.fails, number: true },
              { key: 'fails.source', title: t.source },
            ]}
            blank={{ name: t.toBeStated }}
          />
          {all.length > 1 && (
            <button
              type="button"
              className="link small"
              onClick={() => field.set(all.filter((_, n) => n !== i) as never)}
            >
              {t.removeWay}
            </button>
          )}
        </FieldGroup>
      ))}
      {next && (
        <p>
          <button type="button" onClick={() => field.set([...all, newWay(next)] as never)}>
            {t.addWay}
          </button>
        </p>
      )}
    </>
  );
}

function LetGoBy({ at, known }: { at: number; known: readonly string[] }) {
  const field = useField([...path, at, 'releases']);
  const mine = Array.isArray(field.raw) ? (field.raw as string[]) : [];
  if (known.length === 0) return null;
  return (
    <div className="field">
      <span>{t.releasesOf}</span>
      <div className="entry" role="group" aria-label={t.releasesOf}>
        {known.map((id) => (
          <label key={id} className="tick">
            <input
              type="checkbox"
              checked={mine.includes(id)}
              onChange={({ target }) => field.set(target.checked ? [...mine, id] : mine.filter((one) => one !== id))}
            />
            {t.release(id)}
          </label>
        ))}
      </div>
      {field.fault && <p className="fault">{`${field.fault.what}. ${field.fault.mend}`}</p>}
    </div>
  );
}
