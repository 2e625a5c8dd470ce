import { lengthText } from '../../core/geometry/length-text.ts';
import type { Cut } from '../../core/scene/part-at.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { FieldTitle } from '../../core/scene/field.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { viewNames } from './camera.ts';
import { sceneTexts as texts } from './scene-texts.ts';
import { showFitted, showNamed, showSurface } from './show-views.ts';
import type { ViewStore } from './view-store.ts';

/** What is shown of the plate, apart from the view: the window keeps it, the tools change it. */
export interface SceneSettings {
  readonly reading: string | null;
  readonly load: string | null;
  readonly apart: number;
  readonly cut: Cut | null;
  readonly measuring: boolean;
  readonly dimensions: boolean;
  readonly slings: boolean;
}

export const firstSettings: SceneSettings = {
  reading: 'utilisation',
  load: null,
  apart: 0,
  cut: null,
  measuring: false,
  dimensions: true,
  slings: false,
};

/** Views, readings, loads, section, panels apart, measuring. */
export function SceneTools({
  scene,
  readings,
  fields = [],
  store,
  settings,
  onChange,
}: {
  readonly scene: Scene;
  readonly readings: readonly Reading[];
  /** What may be laid within the parts; as a reading its id begins with “field:”. */
  readonly fields?: readonly FieldTitle[];
  readonly store: ViewStore;
  readonly settings: SceneSettings;
  readonly onChange: (settings: SceneSettings) => void;
}) {
  const change = (some: Partial<SceneSettings>): void => onChange({ ...settings, ...some });
  const text = lengthText(scene.units);
  const { low, high } = scene.box;
  const most = Math.max(0.25, 0.25 * Math.hypot(high[0] - low[0], high[1] - low[1]));
  return (
    <div className="scene-tools">
      <div role="group" aria-label={texts.viewsLabel}>
        {viewNames.map((name) => (
          <button key={name} type="button" onClick={() => showNamed(store, scene, name, settings.apart)}>
            {texts.views[name]}
          </button>
        ))}
        <button type="button" onClick={() => showFitted(store, scene, settings.apart)}>
          {texts.views.fit}
        </button>
        <button type="button" onClick={() => showSurface(store, scene)}>
          {texts.views.surface}
        </button>
      </div>
      <label>
        {texts.reading}
        <select
          value={settings.reading ?? ''}
          onChange={({ target }) => change({ reading: target.value === '' ? null : target.value })}
        >
          <option value="">{texts.noReading}</option>
          <optgroup label={texts.bent.parts}>
            {readings.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </optgroup>
          {fields.length > 0 && (
            <optgroup label={texts.bent.fields}>
              {fields.map(({ id, title }) => (
                <option key={id} value={`field:${id}`}>
                  {title}
                </option>
              ))}
            </optgroup>
          )}
        </select>
      </label>
      <label>
        {texts.load}
        <select
          value={settings.load ?? ''}
          onChange={({ target }) => change({ load: target.value === '' ? null : target.value })}
        >
          <option value="">{texts.noLoad}</option>
          {scene.loads.map(({ id, title }) => (
            <option key={id} value={id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <Section scene={scene} cut={settings.cut} onChange={(cut) => change({ cut })} />
      <label>
        {texts.apart}
        <input
          type="range"
          min={0}
          max={most}
          step={most / 100}
          value={settings.apart}
          aria-valuetext={text(settings.apart)}
          onChange={({ target }) => change({ apart: target.valueAsNumber })}
        />
      </label>
      <div role="group">
        {(['dimensions', 'measuring', 'slings'] as const).map((name) => (
          <label key={name} className="switch">
            <input
              type="checkbox"
              checked={settings[name]}
              onChange={({ target }) => change({ [name]: target.checked })}
            />
            {name === 'measuring' ? texts.measure : texts[name]}
          </label>
        ))}
      </div>
    </div>
  );
}

function Section({
  scene,
  cut,
  onChange,
}: {
  readonly scene: Scene;
  readonly cut: Cut | null;
  readonly onChange: (cut: Cut | null) => void;
}) {
  const text = lengthText(scene.units);
  const range = (axis: Cut['axis']): readonly [number, number] => {
    const i = axis === 'x' ? 0 : axis === 'y' ? 1 : 2;
    return [scene.box.low[i], scene.box.high[i]];
  };
  const [from, to] = cut ? range(cut.axis) : [0, 1];
  return (
    <>
      <label>
        {texts.section}
        <select
          value={cut?.axis ?? ''}
          onChange={({ target }) => {
            const axis = target.value as Cut['axis'] | '';
            if (axis === '') return onChange(null);
            const [low, high] = range(axis);
            // The half towards the eye of the oblique view is taken away.
            onChange({ axis, at: (low + high) / 2, away: axis === 'y' ? 'below' : 'above' });
          }}
        >
          <option value="">{texts.sectionNone}</option>
          {(['x', 'y', 'z'] as const).map((axis) => (
            <option key={axis} value={axis}>
              {texts.sectionAxis[axis]}
            </option>
          ))}
        </select>
      </label>
      {cut && (
        <span className="section">
          <input
            type="range"
            aria-label={texts.sectionAt}
            aria-valuetext={text(cut.at)}
            min={from}
            max={to}
            step={(to - from) / 200}
            value={cut.at}
            onChange={({ target }) => onChange({ ...cut, at: target.valueAsNumber })}
          />
          <button type="button" onClick={() => onChange({ ...cut, away: cut.away === 'above' ? 'below' : 'above' })}>
            {texts.sectionOther}
          </button>
        </span>
      )}
    </>
  );
}
