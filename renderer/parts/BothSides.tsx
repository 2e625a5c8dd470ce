import { useId, useState } from 'react';
import type { BothView, RowView } from '../../core/engine/result-view.ts';
import type { Json } from '../../core/document/edit.ts';
import { useField } from '../state/use-field.ts';
import { texts } from '../texts.ts';

const t = texts.strength;

/** Both demands of a check in one line, and which governs. */
export function BothSides({ both }: { both: BothView }) {
  return (
    <p className={`both-sides small${both.smaller === '' ? '' : ' smaller'}`}>
      {(['hand', 'solver'] as const).map((side) => {
        const { demand, use, reason } = both[side];
        return (
          <span key={side} className={both.governs === side ? 'governs' : 'quiet'}>
            {t.sides[side]} {demand === '–' && reason !== '' ? reason : `${demand} (${use})`}
          </span>
        );
      })}
      <span>{both.smaller === '' ? t.governsBy(t.sides[both.governs]) : t.smallerTaken(both.smaller)}</span>
    </p>
  );
}

type Choice = { readonly check: string; readonly place?: string; readonly take: string; readonly reason: string };

/** Lets the smaller of two demands stand, with a reason that is printed; or the larger again. */
export function ChooseSide({ row, both }: { row: RowView; both: BothView }) {
  const field = useField(['forces', 'choose']);
  const [reason, setReason] = useState('');
  const id = useId();
  const choices = Array.isArray(field.raw) ? (field.raw as readonly Choice[]) : [];
  const others = choices.filter(({ check, place }) => check !== row.id || place !== row.place);
  if (both.hand.use === '–' || both.solver.use === '–') return null;
  if (both.smaller !== '')
    return (
      <p className="choose-side">
        {/* a choice for every place is taken out in the list of all choices */}
        {others.length < choices.length ? (
          <button type="button" onClick={() => field.set(others as Json)}>
            {t.letLarger}
          </button>
        ) : (
          t.chosenEverywhere
        )}
      </p>
    );
  const take = both.governs === 'hand' ? 'solver' : 'hand';
  return (
    <form
      className="choose-side"
      onSubmit={(event) => {
        event.preventDefault();
        field.set([...others, { check: row.id, place: row.place, take, reason: reason.trim() }] as Json);
      }}
    >
      <label htmlFor={id}>{t.takeSmaller(t.sides[take])}</label>
      <input id={id} type="text" value={reason} maxLength={200} placeholder={t.reason} onChange={({ target }) => setReason(target.value)} />
      <button type="submit" disabled={reason.trim() === ''}>
        {t.takeIt}
      </button>
    </form>
  );
} // prettier-ignore
