import { printedUnit, quantityText, unitText } from '../../core/quantity/format-quantity.ts';
import { fieldRange, type Field, type FieldExtreme } from '../../core/scene/field.ts';
import { largestMark, markWords } from '../../core/scene/marks.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { bands } from './bent-material.ts';
import type { BentPicture } from './bent-picture.ts';
import { colourAt, cssColour } from './colour-map.ts';
import { sceneTexts as texts } from './scene-texts.ts';

/** What is drawn moved, how large, and what its colours and arrows mean. */
export function BentLegends({ bent, scene, isDark, onSelect }: { readonly bent: BentPicture; readonly scene: Scene; readonly isDark: boolean; readonly onSelect: (part: string) => void }) {
  const { scale, field, marks } = bent;
  return (
    <>
      {scale !== null && (
        <section className="scene-legend load bent" aria-label={texts.bent.shape}>
          <div className="what">
            <h3>{bent.title}</h3>
            <p>
              <b>{bent.size}</b>
            </p>
          </div>
          <p className="path">
            {bent.said} {texts.bent.faint}
          </p>
        </section>
      )}
      {field && <FieldLegend field={field} bent={bent} scene={scene} isDark={isDark} onSelect={onSelect} />}
      {marks && <MarksLegend bent={bent} marks={marks} scene={scene} />}
    </>
  );
} // prettier-ignore

function FieldLegend({ field, bent, scene, isDark, onSelect }: { field: Field; bent: BentPicture; scene: Scene; isDark: boolean; onSelect: (part: string) => void }) {
  const unit = printedUnit(field.unit, scene.units);
  const print = (si: number): string => quantityText(si, unit, 3);
  const length = (si: number): string => quantityText(si, printedUnit('mm', scene.units), 3);
  const { from, to } = fieldRange(field);
  const isBanded = field.on === 'tubes';
  const steps = isBanded ? bands : 18;
  const stops = Array.from({ length: steps }, (_, i) => cssColour(colourAt(i / (steps - 1), isDark)));
  const image = isBanded
    ? stops.flatMap((colour, i) => [`${colour} ${(100 * i) / steps}%`, `${colour} ${(100 * (i + 1)) / steps}%`])
    : stops;
  const nought = (100 * (0 - from)) / (to - from);
  const title = (id: string): string => scene.parts.find((part) => part.id === id)?.title ?? id;
  const place = ({ part, x, y, loading }: FieldExtreme) => (
    <>
      <button type="button" onClick={() => onSelect(part)}>
        {title(part)}
      </button>
      , x {length(x)}, y {length(y)}
      {bent.loadings.length > 1 && `; ${bent.loadings[loading]}`}
    </>
  );
  return (
    <section className="scene-legend bent" aria-label={field.title}>
      <div className="what">
        <h3>
          {field.title}, {unitText(unit)}
        </h3>
        <p>{bent.loadings.length > 1 ? texts.bent.largestOf(bent.loadings.length) : bent.loadCase}</p>
      </div>
      <div className="range">
        <div className="bar" style={{ backgroundImage: `linear-gradient(to right, ${image.join(', ')})` }}>
          {nought > 2 && nought < 98 && <span className="limit" style={{ left: `${nought}%` }} title="0" />}
        </div>
        <div className="ends">
          <span>{print(from)}</span>
          {nought > 15 && nought < 85 && (
            <span className="limit" style={{ left: `${nought}%` }}>
              0
            </span>
          )}
          <span>{print(to)}</span>
        </div>
      </div>
      <dl>
        {(['highest', 'lowest'] as const).map((end) => {
          const extreme = field[end];
          return (
            extreme && (
              <div key={end}>
                <dt>{texts.legend[end]}</dt>
                <dd>
                  <b>{print(extreme.value)}</b> {place(extreme)}
                </dd>
              </div>
            )
          );
        })}
      </dl>
      <ul>
        {field.hasHot && (
          <li>
            <span className="swatch hot" />
            {texts.bent.hot}
          </li>
        )}
        {field.on !== 'both' && (
          <li>
            <span className="swatch unvalued" />
            {texts.legend.unvalued}
          </li>
        )}
      </ul>
      <p className="remark">{field.remark}</p>
    </section>
  );
} // prettier-ignore

function MarksLegend({ bent, marks, scene }: { bent: BentPicture; marks: NonNullable<BentPicture['marks']>; scene: Scene }) {
  const largest = largestMark(marks);
  if (!largest) return null;
  const unit = printedUnit(markWords[marks.kind].unit, scene.units);
  const words = texts.bent.marks[marks.kind];
  return (
    <section className="scene-legend load bent" aria-label={words.title}>
      <div className="what">
        <h3>
          {words.title}, {unitText(unit)}
        </h3>
        <p>
          {texts.bent.longest}: <b>{quantityText(largest.value, unit, 3)}</b>, {marks.titles[largest.at]}
        </p>
      </div>
      <p className="path">
        {bent.loadCase}. {words.said} {texts.bent.count(marks.values.length)}
      </p>
    </section>
  );
} // prettier-ignore
