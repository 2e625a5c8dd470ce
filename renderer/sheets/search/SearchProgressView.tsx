import { goOnSearching, stopSearch, useSearch } from '../../state/search.ts';
import { texts } from '../../texts.ts';

const t = texts.search;

/** How far the search is, what it found so far, and what stopped the others. */
export function SearchProgressView() {
  const { state, progress, appraising } = useSearch();
  if (!progress) return state === 'running' ? <p className="quiet">{t.beginning}</p> : null;
  const { options, decided, judged, passing, beaten, solver, stopped, front, gap } = progress;
  return (
    <div className="search-progress">
      <p aria-live="polite">{t.far(decided, options, front.length)}</p>
      <progress max={options} value={decided} aria-label={t.progress} />
      <p className="quiet">{t.counts(judged, passing, beaten)}</p>
      {solver && <p className="quiet">{t.solved(solver.solved, solver.left)}</p>}
      {state !== 'idle' && solver?.doing && (
        <p className="quiet">{t.solving(solver.doing.what, solver.doing.done, solver.doing.of)}</p>
      )}
      {state !== 'idle' && gap !== null && <p className="quiet">{t.gap(gap)}</p>}
      {appraising && <p className="quiet">{t.appraising(appraising.done, appraising.of, appraising.what)}</p>}
      {state !== 'idle' && (
        <div className="acts">
          {state === 'running' ? (
            <button type="button" onClick={stopSearch}>
              {t.stop}
            </button>
          ) : (
            <button type="button" className="primary" onClick={goOnSearching}>
              {t.goOn}
            </button>
          )}
        </div>
      )}
      {stopped.length > 0 && (
        <details open={state === 'idle' && front.length === 0}>
          <summary>{t.turnedDown}</summary>
          <table aria-label={t.turnedDown}>
            <thead>
              <tr>
                <th scope="col">{t.stoppedBy}</th>
                <th scope="col">{t.options}</th>
              </tr>
            </thead>
            <tbody>
              {stopped.map(({ title, count }) => (
                <tr key={title}>
                  <td>{title}</td>
                  <td className="number">{count}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </details>
      )}
    </div>
  );
}
