import type { MotionSet } from '../../core/engine/motion-view.ts';
import { significant } from '../../core/quantity/format-quantity.ts';
import { showMotion, useSolver } from '../state/solver.ts';
import { texts } from '../texts.ts';
import { TableSaver } from './TableSaver.tsx';

const t = texts.whole;

/** Natural modes and ways of buckling that were found: listed, and one of them in the picture, playing or still. */
export function Motions() {
  const motions = useSolver((state) => state.motions);
  return (Object.keys(t.motionKinds) as MotionSet['kind'][]).map((kind) => {
    const found = motions[kind];
    return found && <Found key={kind} of={found.edit} set={found.motions} />;
  });
}

function Found({ set, of }: { readonly set: MotionSet; readonly of: number }) {
  const edit = useSolver((state) => state.edit);
  const shown = useSolver((state) => state.motion);
  const playing = useSolver((state) => state.playing);
  const isStale = of !== edit;
  const mine = shown?.kind === set.kind ? shown : null;
  return (
    <section aria-label={t.motionKinds[set.kind]} className="solver-motions">
      <h3>{t.motionKinds[set.kind]}</h3>
      {isStale && <p className="solver-loud">{t.stale}</p>}
      {set.groups.map((group, g) => (
        <div key={group.title}>
          <table className="solver-list">
            <caption>{group.title}</caption>
            {group.motions.length > 0 && (
              <thead>
                <tr>
                  <th scope="col">{t.motion}</th>
                  {set.kind !== 'free' && <th scope="col" className="number">{set.kind === 'modes' ? t.frequency : t.factor}</th>}
                  <th scope="col">{t.place}</th>
                </tr>
              </thead>
            )}
            <tbody>
              {group.motions.map(({ value, said }, at) => (
                <tr key={at}>
                  <th scope="row">
                    <button type="button" aria-pressed={mine?.group === g && mine.at === at}
                      onClick={() => showMotion({ kind: set.kind, group: g, at })}>
                      {at + 1}
                    </button>
                  </th>
                  {set.kind !== 'free' && <td className="number">{significant(value, 3)}{set.kind === 'modes' ? ' Hz' : ''}</td>}
                  <td className="small">{said}</td>
                </tr>
              ))}
            </tbody>
          </table>
          {group.motions.length === 0 && <p>{group.none}</p>}
          {!group.converged && <p className="solver-loud">{t.notConverged}</p>}
        </div>
      ))}
      {mine && (
        <div className="solver-wishes">
          <button type="button" onClick={() => useSolver.setState({ playing: !playing })}>
            {playing ? t.pause : t.play}
          </button>
          <button type="button" onClick={() => useSolver.setState({ motion: null })}>
            {t.ownShape}
          </button>
          <span className="quiet small">{t.swings}</span>
        </div>
      )}
      {set.water && <p className="small">{set.water}</p>}
      {set.findings.map((line) => (
        <p key={line} className="solver-loud">{line}</p>
      ))}
      {set.cautions.map((line) => (
        <p key={line} className="quiet small">{line}</p>
      ))}
      {set.kind !== 'free' && <TableSaver label={t.saveMotions} name={`${set.kind}.csv`} disabled={isStale} of={{ motions: set.kind }} />}
    </section>
  );
} // prettier-ignore
