import { quantityText } from '../../core/quantity/format-quantity.ts';
import { extremesOf } from '../../core/scene/extremes-of.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { unitText } from '../../core/quantity/format-quantity.ts';
import { colourAt, cssColour } from './colour-map.ts';
import { rangeOf } from './part-states.ts';
import { sceneTexts as texts } from './scene-texts.ts';

/** What the colours of a reading mean: unit, load case, range, limit, extremes with their places, hatches. */
export function Legend({
  reading,
  scene,
  isDark,
  onSelect,
}: {
  readonly reading: Reading;
  readonly scene: Scene;
  readonly isDark: boolean;
  readonly onSelect: (part: string) => void;
}) {
  const extremes = extremesOf(reading);
  const range = rangeOf(reading);
  const words = texts.legend;
  const titleOf = (id: string): string => scene.parts.find((part) => part.id === id)?.title ?? id;
  const print = (value: number): string => quantityText(value, reading.unit, 3);
  const verdicts = new Set([
    ...reading.verdicts.values(),
    ...([...reading.values.values()].includes(null) ? (['cannot be judged'] as const) : []),
  ]);
  const stops = Array.from({ length: 18 }, (_, i) => cssColour(colourAt(i / 17, isDark))).join(', ');
  const at = (value: number): string => `${(100 * (value - range!.from)) / (range!.to - range!.from)}%`;
  const unit = reading.unit === '1' ? '' : `, ${unitText(reading.unit)}`;
  const several = scene.parts.some(({ kind, bays }) => kind === 'panel' && bays.length > 1);
  return (
    <section className="scene-legend reading" aria-label={reading.title}>
      <div className="what">
        <h3>
          {reading.title}
          {unit}
        </h3>
        <p>{reading.loadCase}</p>
      </div>
      {extremes && range ? (
        <div className="measured">
          <div className="range">
            <div className="bar" style={{ backgroundImage: `linear-gradient(to right, ${stops})` }}>
              {reading.limit !== undefined && reading.limit < range.to && (
                <span className="limit" style={{ left: at(reading.limit) }} title={words.limit} />
              )}
            </div>
            <div className="ends">
              <span>{print(range.from)}</span>
              {reading.limit !== undefined && reading.limit < range.to * 0.9 && reading.limit > range.to * 0.15 && (
                <span className="limit" style={{ left: at(reading.limit) }}>
                  {words.limit} {print(reading.limit)}
                </span>
              )}
              <span>{print(range.to)}</span>
            </div>
          </div>
          <dl>
            {(['highest', 'lowest'] as const).map((end) => (
              <div key={end}>
                <dt>{words[end]}</dt>
                <dd>
                  <b>{print(extremes[end].value)}</b>{' '}
                  <button type="button" onClick={() => onSelect(extremes[end].part)}>
                    {titleOf(extremes[end].part)}
                  </button>
                </dd>
              </div>
            ))}
          </dl>
        </div>
      ) : (
        <p className="remark">{words.nothing}</p>
      )}
      <ul>
        {verdicts.has('fails') && (
          <li>
            <span className="swatch fails" />
            {words.fails}
          </li>
        )}
        {verdicts.has('cannot be judged') && (
          <li>
            <span className="swatch unjudged" />
            {words.unjudged}
          </li>
        )}
        <li>
          <span className="swatch unvalued" />
          {words.unvalued}
        </li>
      </ul>
      {(several || reading.remark) && (
        <p className="remark">
          {several && words.several} {reading.remark}
        </p>
      )}
    </section>
  );
}
