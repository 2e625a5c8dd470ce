import type { FieldPath } from '../../core/document/edit.ts';
import { chosenRecord } from '../state/add-record.ts';
import { said } from '../state/said.ts';
import { useSession } from '../state/session-context.ts';
import { texts } from '../texts.ts';

/** The store does not hold a record: its file can be chosen again, and is known by its hash. `path`: of the record. */
export function MissingRecord({ path, name, why }: { path: FieldPath; name: string; why?: string | undefined }) {
  const session = useSession();
  const again = () =>
    said(async () => {
      const chosen = await chosenRecord(session);
      if (chosen) await session.edit({ kind: 'setField', option: null, path, value: chosen.record });
    });
  return (
    <div className="fault" role="alert">
      <p>
        {why && `${why}. `}
        {texts.tank.missing(name)}
      </p>
      <button type="button" onClick={() => void again()}>
        {texts.tank.chooseAgain}
      </button>
    </div>
  );
}
