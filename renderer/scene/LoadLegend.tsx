import { printedUnit, quantityText } from '../../core/quantity/format-quantity.ts';
import type { Scene, SceneLoad } from '../../core/scene/scene.ts';
import { sceneTexts as texts } from './scene-texts.ts';

/** What the arrows show: case, force with its sign, path, and the rule of signs. */
export function LoadLegend({ load, units }: { readonly load: SceneLoad; readonly units: Scene['units'] }) {
  const force = quantityText(load.force, printedUnit('kN', units), 3);
  return (
    <section className="scene-legend load" aria-label={load.title}>
      <div className="what">
        <h3>{load.title}</h3>
        <p>
          <b>{texts.loadTotal(load.force > 0 ? `+${force}` : force)}</b>, {texts.loadFactor(load.loadFactor)}
        </p>
      </div>
      <p className="path">
        {load.missing ? texts.loadMissing(load.missing) : load.path} {texts.sign}
      </p>
    </section>
  );
}
