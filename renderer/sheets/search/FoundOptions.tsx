import { useState } from 'react';
import type { FoundView } from '../../../core/engine/search-service.ts';
import type { AimId } from '../../../core/options/search/aims.ts';
import type { Json } from '../../../core/document/edit.ts';
import { CopyButton } from '../../parts/CopyButton.tsx';
import { figureItem } from '../../parts/figure-item.ts';
import { FrontPlot, titled } from '../../parts/FrontPlot.tsx';
import { freeOptionId } from '../../state/free-option-id.ts';
import { foundAt, lookAt, useSearch, type Found } from '../../state/search.ts';
import { useSession } from '../../state/session-context.ts';
import { texts } from '../../texts.ts';

const t = texts.search;
const order: readonly AimId[] = ['mass', 'weight', 'use', 'cost', 'holes', 'addedMass', 'drag'];

/** The front as plot and list; one of them in full, which becomes an option of the document. */
export function FoundOptions({ found, isCurrent }: { found: Found; isCurrent: boolean }) {
  const session = useSession();
  const state = useSearch();
  const [up, setUp] = useState<AimId>('use');
  const one = foundAt(state);
  if (found.found.length === 0) return <p className="loud">{t.nothing}</p>;
  const aims = order.filter((aim) => found.found[0]!.aims[aim] !== undefined);
  return (
    <>
      <div className="plot-head">
        <h3>{t.plot}</h3>
        <label>
          {t.against}
          <select value={up} onChange={({ target }) => setUp(target.value as AimId)}>
            {aims.slice(1).map((aim) => (
              <option key={aim} value={aim}>
                {t.aims[aim]}
              </option>
            ))}
          </select>
        </label>
      </div>
      <FrontPlot found={found.found} across="mass" up={up} units={found.units} at={state.at} onLook={lookAt} />
      <CopyButton
        label={texts.copy.figure}
        what={() => figureItem(document.querySelector<SVGSVGElement>('.search-sheet .comparison-plot')!)}
      />
      <div className="table-frame">
        <table aria-label={t.list}>
          <thead>
            <tr>
              <th scope="col">{t.number}</th>
              {aims.map((aim) => (
                <th key={aim} scope="col">
                  {titled(aim, found.units)}
                </th>
              ))}
              <th scope="col">{t.what}</th>
            </tr>
          </thead>
          <tbody>
            {found.found.map((each, n) => (
              <tr key={each.option.id} className={n === state.at ? 'shown' : ''}>
                <td className="number">{n + 1}</td>
                {aims.map((aim) => (
                  <td key={aim} className="number">
                    {each.aims[aim]!.text}
                  </td>
                ))}
                <td>
                  <button type="button" className="link" onClick={() => lookAt(n)}>
                    {each.option.title}
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {one && <InFull one={one} isCurrent={isCurrent} />}
      <div className="acts">
        <button
          type="button"
          disabled={!isCurrent}
          onClick={
            () =>
            void session.edit({ kind: 'setField', option: null, path: ['search', 'record'], value: found.record as unknown as Json }) // prettier-ignore
          }
        >
          {t.keep}
        </button>
        <p className="quiet">{t.keepHelp}</p>
      </div>
      <p className="quiet">{t.caution(found.progress.solver !== null)}</p>
    </>
  );
}

function InFull({ one, isCurrent }: { one: FoundView; isCurrent: boolean }) {
  const session = useSession();
  const take = async () => {
    const id = freeOptionId(one.option.id);
    await session.edit({ kind: 'addOption', option: { ...one.option, id } });
    await session.show(id);
  };
  return (
    <section className="in-full">
      <h3>{one.option.title}</h3>
      <p>{t.governs(one.governing)}</p>
      {one.unjudged.length > 0 && <p className="loud">{t.unjudged(one.unjudged.join('; '))}</p>}
      {one.failsAside.length > 0 && <p className="loud">{t.failsAside(one.failsAside.join('; '))}</p>}
      {one.whyNotThinner.map((words) => (
        <p key={words}>{words}</p>
      ))}
      <div className="acts">
        <button type="button" className="primary" disabled={!isCurrent} onClick={() => void take()}>
          {t.take}
        </button>
      </div>
    </section>
  );
}
