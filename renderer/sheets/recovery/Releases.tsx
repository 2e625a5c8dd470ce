import { FieldGroup } from '../../parts/FieldGroup.tsx';
import { FieldList } from '../../parts/FieldList.tsx';
import { StatedNumber } from '../../parts/StatedNumber.tsx';
import { useField } from '../../state/use-field.ts';
import { texts } from '../../texts.ts';
import { canister, release } from './recovery-fields.ts';
import { newCanister, newRelease } from './recovery-starts.ts';

const t = texts.recovery;
const path = ['recovery', 'releases'] as const;
type Release = { readonly id: string };

/** What lets the floats go, each with its rates and its canister. */
export function Releases() {
  const field = useField(path);
  const inch = useField(['units']).raw === 'inch';
  const all = Array.isArray(field.raw) ? (field.raw as Release[]) : [];
  const next = [1, 2, 3, 4].map((n) => `R${n}`).find((id) => all.every((one) => one.id !== id));
  return (
    <>
      {all.map(({ id }, i) => (
        <FieldGroup key={id} title={t.release(id)}>
          <FieldList path={[...path, i]} of={release} />
          {(['fails', 'failsPerYear', 'falsePerYear'] as const).map((name) => (
            <StatedNumber
              key={name}
              path={[...path, i, name]}
              label={t.rates[name][0]}
              help={t.rates[name][1]}
              first={0.05}
            />
          ))}
          <Canister at={i} inch={inch} />
          <button type="button" className="link small" onClick={() => field.set(all.filter((_, n) => n !== i))}>
            {t.removeRelease}
          </button>
        </FieldGroup>
      ))}
      {next && (
        <p>
          <button type="button" onClick={() => field.set([...all, newRelease(next, inch)])}>
            {t.addRelease}
          </button>
        </p>
      )}
      {all.length > 1 && <StatedBeta />}
    </>
  );
}

function Canister({ at, inch }: { at: number; inch: boolean }) {
  const field = useField([...path, at, 'canister']);
  if (field.raw === undefined)
    return (
      <p>
        <button type="button" className="plain small" onClick={() => field.set(newCanister(inch))}>
          {t.addCanister}
        </button>
      </p>
    );
  return (
    <>
      <FieldList path={[...path, at, 'canister']} of={canister} />
      <p>
        <button type="button" className="link small" onClick={field.clear}>
          {t.removeCanister}
        </button>
      </p>
    </>
  );
}

/** The common cause of two releases: a part and its source. */
function StatedBeta() {
  const field = useField(['recovery', 'commonCause']);
  if (field.raw === undefined)
    return (
      <p>
        <button
          type="button"
          className="plain small"
          onClick={() => field.set({ beta: 0.1, source: texts.stated.source })}
        >
          {texts.stated.add(t.beta[0])}
        </button>
      </p>
    );
  return (
    <FieldGroup title={t.beta[0]}>
      <FieldList
        path={['recovery', 'commonCause']}
        of={[
          { at: ['beta'], takes: 'number', label: t.beta[0], help: t.beta[1] },
          { at: ['source'], takes: 'text', label: texts.stated.sourceOf(t.beta[0]), help: texts.stated.sourceHelp },
        ]}
      />
      <button type="button" className="link small" onClick={field.clear}>
        {texts.stated.remove(t.beta[0])}
      </button>
    </FieldGroup>
  );
}
