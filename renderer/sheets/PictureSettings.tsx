import type { SolvedSet } from '../../core/engine/solve-service.ts';
import { fieldTitles } from '../../core/scene/field.ts';
import { markKinds, type MarkKind } from '../../core/scene/marks.ts';
import { fieldReading, usePicture } from '../state/picture.ts';
import { showDirection, useSolver } from '../state/solver.ts';
import { texts } from '../texts.ts';

const t = texts.whole;

/** What the picture shows of the solved plate: shape and its scale, colours within parts, arrows, and of which loadings. */
export function PictureSettings({ set }: { readonly set: SolvedSet }) {
  const { shape, scale, direction, envelope, marks, motion } = useSolver();
  const reading = usePicture((state) => state.reading);
  const loading = useSolver((state) => state.loading);
  const view = set.views[Math.min(loading, set.views.length - 1)]!;
  const there = markKinds.filter((kind) => view.marks.some((each) => each.kind === kind));
  const isField = reading?.startsWith('field:') ?? false;
  return (
    <fieldset className="solver-picture">
      <legend>{t.inPicture}</legend>
      <div role="radiogroup" aria-label={t.direction} className="solver-direction">
        <span>{t.direction}</span>
        {([null, 'down', 'up'] as const).map((way) => (
          <label key={way ?? 'all'}>
            <input type="radio" name="solver-direction" checked={direction === way}
              disabled={way !== null && !set.views.some((one) => one.direction === way)}
              onChange={() => showDirection(way)} />{' '}
            {t.directions[way ?? 'all']}
          </label>
        ))}
      </div>
      <label>
        {t.colours}{' '}
        <select value={isField ? reading! : ''}
          onChange={({ target }) => {
            usePicture.setState({ reading: target.value === '' ? 'utilisation' : target.value });
            if (target.value !== '') useSolver.setState({ motion: null });
          }}>
          <option value="">{t.noColours}</option>
          {fieldTitles.map(({ id, title }) => (
            <option key={id} value={fieldReading(id)}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <label>
        <input type="checkbox" checked={envelope} disabled={!isField}
          onChange={({ target }) => useSolver.setState({ envelope: target.checked })} />{' '}
        {t.envelope}
      </label>
      <label>
        {t.forces}{' '}
        <select value={marks ?? ''}
          onChange={({ target }) => useSolver.setState({ marks: (target.value || null) as MarkKind | null, motion: null })}>
          <option value="">{t.noForces}</option>
          {there.map((kind) => (
            <option key={kind} value={kind}>
              {t.forcesOf[kind]}
            </option>
          ))}
        </select>
      </label>
      <label>
        <input type="checkbox" checked={shape && !motion}
          onChange={({ target }) => useSolver.setState({ shape: target.checked, motion: null })} />{' '}
        {t.shape}
      </label>
      <label>
        {t.scale}{' '}
        <input type="number" min={0} step="any" value={scale ?? ''} placeholder={t.own}
          onChange={({ target }) => useSolver.setState({ scale: target.valueAsNumber > 0 ? target.valueAsNumber : null })} />
      </label>
      <button type="button" onClick={() => useSolver.setState({ scale: 1, shape: true, motion: null })}>
        {t.trueScale}
      </button>
      <button type="button" onClick={() => useSolver.setState({ scale: null })}>
        {t.own}
      </button>
    </fieldset>
  );
} // prettier-ignore
