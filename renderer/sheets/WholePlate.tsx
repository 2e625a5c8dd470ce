import { memo, useDeferredValue, useEffect } from 'react';
import type { SolvedSet, SolveWish } from '../../core/engine/solve-service.ts';
import type { BesideHand, LoadingView } from '../../core/engine/solver-view.ts';
import { printedUnit, quantityText, significant, type UnitSystem } from '../../core/quantity/format-quantity.ts';
import { Folding } from '../parts/Folding.tsx';
import { cancelSolving, shownSet, startSolver, useSolver, wish } from '../state/solver.ts';
import { useWorkbench } from '../state/workbench.ts';
import { texts } from '../texts.ts';
import { MeshStudyTable } from './MeshStudyTable.tsx';
import { Motions } from './Motions.tsx';
import { PictureSettings } from './PictureSettings.tsx';
import { TableSaver } from './TableSaver.tsx';
import { TubePlot } from './TubePlot.tsx';
import './whole-plate.css';

const t = texts.whole;

/** The plate solved as one structure: what it does under each loading, beside what the hand level says. */
export function WholePlateSheet() {
  useEffect(startSolver, []);
  const solver = useSolver();
  const set = shownSet(solver);
  const units = useWorkbench((state) => state.document?.read?.units ?? state.scene?.units ?? 'metric');
  const faulty = useWorkbench((state) => (state.document?.faults.length ?? 0) > 0);
  const { sets, progress, cancelled, refusals, edit, study, changed, direction } = solver;
  const view = set?.views[Math.min(solver.loading, set.views.length - 1)] ?? null;
  const stale = set !== null && set.edit !== edit;
  // Many rows: laid out in slices between what a person does.
  const told = useDeferredValue(view);
  return (
    <div className="whole-plate">
      <p className="quiet">{t.about}</p>
      <div className="solver-state" role="status">
        {faulty
          ? t.faulty
          : progress
            ? t.solving(progress.progress.what)
            : cancelled
              ? t.cancelled
              : set || refusals.length > 0
                ? ''
                : t.waiting}
      </div>
      {progress && (
        <div className="solver-progress">
          <progress
            aria-label={t.solving(progress.progress.what)}
            value={progress.progress.done}
            max={progress.progress.of}
          />
          <button type="button" onClick={cancelSolving}>
            {t.cancel}
          </button>
        </div>
      )}
      {refusals.map(({ what, mend }) => (
        <p key={what} className="solver-loud" role="alert">
          {what}. {mend}
        </p>
      ))}
      {set && view && (
        <>
          <div className="solver-choices">
            <label>
              {t.stage}
              <select
                value={set.name}
                onChange={({ target }) =>
                  useSolver.setState({
                    chosen: target.value as typeof set.name,
                    loading: 0,
                    direction: null,
                    motion: null,
                  })
                }
              >
                {(Object.keys(t.sets) as (typeof set.name)[])
                  .filter((name) => sets[name])
                  .map((name) => (
                    <option key={name} value={name}>
                      {t.sets[name]}
                    </option>
                  ))}
              </select>
            </label>
            <label>
              {t.loading}
              <select
                value={set.views.indexOf(view)}
                onChange={({ target }) => useSolver.setState({ loading: Number(target.value), motion: null })}
              >
                {set.views.map((one, i) => (
                  <option key={i} value={i} disabled={direction !== null && one.direction !== direction}>
                    {one.title}, {one.loading}
                    {one.variant > 0 ? `, ${one.variant + 1}` : ''}
                  </option>
                ))}
              </select>
            </label>
          </div>
          <p className={stale ? 'solver-loud' : 'quiet'} data-solved={stale ? 'before' : 'now'}>
            <strong>{t.sets[set.name]}.</strong> {stale ? t.stale : t.current}
          </p>
          <PictureSettings set={set} />
          {told && <Shown view={told} units={units} />}
          <Ranges set={set} units={units} />
        </>
      )}
      {set && <Wishes />}
      {study && <MeshStudyTable study={study.study} stale={study.edit !== edit} units={units} />}
      {changed && (
        <section aria-label={t.changed}>
          <h3>{t.changed}</h3>
          {changed.edit !== edit && <p className="solver-loud">{t.stale}</p>}
          {changed.words.map((line, i) => (
            <p key={i}>{line}</p>
          ))}
          <TableSaver
            label={t.saveChanged}
            name={changed.table.name}
            disabled={changed.edit !== edit}
            of={{ table: changed.table }}
          />
        </section>
      )}
      <Motions />
      {set && view && (
        <TableSaver
          label={t.save}
          name="whole-plate.csv"
          disabled={stale}
          of={{ set: set.name, loading: set.views.indexOf(view) }}
        />
      )}
      <ul className="quiet small">
        {t.cautions.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

const textIn = (units: UnitSystem) => (si: number, unit: string) => quantityText(si, printedUnit(unit, units), 3);
/** A part of the load that is none but for rounding is nought. */
const percent = (part: number): string => (Math.abs(part) < 1e-9 ? '0 %' : `${significant(100 * part, 3)} %`);

const Shown = memo(function Shown({ view, units }: { view: LoadingView; units: UnitSystem }) {
  const text = textIn(units);
  const { path } = view;
  return (
    <>
      {!view.settled && <p className="solver-loud">{t.unsettled}</p>}
      <p className="solver-sentence">{view.sentence}</p>
      <p className={view.settled ? 'quiet' : 'solver-loud'}>{view.contact}</p>
      <Numbers numbers={view.numbers} text={text} />
      <TubePlot tubes={view.tubes} units={units} />
      <List title={t.panels} head={[t.panel, t.dip, t.dipOverThickness, t.stress]}
        rows={view.panels.map(({ id, dip, dipOverThickness, stress, side }) => [id, dip === null ? '–' : text(dip, 'mm'), significant(dipOverThickness, 2), stress === null ? '–' : `${text(stress, 'MPa')} ${side}`])} />
      <List title={t.bolts} head={[t.bolt, t.pull, t.shear]} rows={view.bolts.map(({ id, pull, shear }) => [id, text(pull, 'kN'), text(shear, 'kN')])} />
      <List title={t.welds} head={[t.weld, t.resultant]} rows={view.welds.map(({ id, tube, resultant }) => [`${id}, ${tube}`, text(resultant, 'kN/m')])} />
      <List title={t.contacts} head={[t.contact, t.force, t.closed]} rows={view.contacts.map(({ panel, tube, force, closed, points }) => [`${panel} on ${tube}`, text(force, 'kN'), `${closed} of ${points}`])} />
      <List title={t.joints} head={[t.jointEnd, t.deflection, t.tubeMoment, t.pull, t.shear, t.weldForce]}
        rows={view.joints.map(({ end, deflection, moment, pull, shear, weld, settled }) => [settled ? t.jointEnds[end] : `${t.jointEnds[end]}: ${t.unsettled}`, text(deflection, 'mm'), text(moment, 'kN*m'), text(pull, 'kN'), text(shear, 'kN'), text(weld, 'kN/m')])} />
      <List title={t.path} head={[t.way, t.part]} rows={[[t.ways.main, percent(path.toMainTubes.all)], [t.ways.cross, percent(path.toCrossTubes.all)], [t.ways.tubes, percent(path.tubes)], [t.ways.inertia, percent(path.byInertia)]]} />
      <h3>{t.mesh}</h3>
      <p>
        {t.meshLine(text(view.size, 'mm'), view.unknowns)} {t.error(percent(view.error.clear), percent(view.error.all))}{' '}
        {view.error.clear > 0.02 && <strong>{t.coarse}</strong>}
      </p>
      <h3>{t.balance}</h3>
      {view.balance.map((line) => (
        <p key={line} className="small">
          {line}
        </p>
      ))}
    </>
  ); // prettier-ignore
});

/** What turning the service load round does to bolts, the widest ranges first. */
function Ranges({ set: { ranges }, units }: { set: SolvedSet; units: UnitSystem }) {
  const text = textIn(units);
  return (
    <List title={t.ranges} head={[t.bolt, t.pullRange, t.mostTension, t.leastTension, t.shearRange]} about={t.rangesAbout}
      rows={ranges.slice(0, most).map(({ id, range, most: high, least, shearRange, parts }) => [parts ? `${id}, ${t.partsFaces}` : id, text(range, 'kN'), text(high, 'kN'), text(least, 'kN'), text(shearRange, 'kN')])} />
  ); // prettier-ignore
}

function Numbers({ numbers, text }: { numbers: readonly BesideHand[]; text: (si: number, unit: string) => string }) {
  return (
    <table className="solver-numbers">
      <caption>{t.numbers}</caption>
      <thead>
        <tr>
          <th scope="col">{t.quantity}</th>
          <th scope="col" className="number">{t.solver}</th>
          <th scope="col" className="number">{t.hand}</th>
          <th scope="col">{t.place}</th>
        </tr>
      </thead>
      <tbody>
        {numbers.map(({ title, unit, solver, hand, place, remark }) => (
          <tr key={title}>
            <th scope="row">{title}</th>
            <td className="number">{text(solver, unit)}</td>
            <td className="number">{hand === null ? '–' : text(hand, unit)}</td>
            <td>
              {place}
              {remark && <span className="quiet small solver-remark">{remark}</span>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  ); // prettier-ignore
}

/** So many rows of a table may lie open among other tables. */
const most = 16;

/** A table whose first column names the row; nothing where there is none. */
function List({
  title,
  head,
  rows,
  about,
}: {
  title: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
  about?: string;
}) {
  if (rows.length === 0) return null;
  return (
    <Folding title={title} isUsuallyFolded={rows.length > most}>
      {about && <p className="quiet small">{about}</p>}
      <table className="solver-list" aria-label={title}>
        <thead>
          <tr>
            {head.map((name, i) => (
              <th key={name} scope="col" className={i > 0 ? 'number' : undefined}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...values], i) => (
            <tr key={i}>
              <th scope="row">{name}</th>
              {values.map((value, k) => (
                <td key={k} className="number">
                  {value}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Folding>
  );
}

function Wishes() {
  const option = useWorkbench((state) => state.document?.option ?? null);
  const base = useWorkbench((state) => state.comparison?.base ?? null);
  return (
    <div className="solver-wishes">
      {(Object.keys(t.wishes) as SolveWish[]).map((what) => (
        <button key={what} type="button" disabled={what === 'what changed' && option === base}
          title={what === 'what changed' && option === base ? t.noBase : undefined} onClick={() => wish(what)}>
          {t.wishes[what]}
        </button>
      ))}
    </div>
  ); // prettier-ignore
}
