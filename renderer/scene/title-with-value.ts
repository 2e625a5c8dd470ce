import { quantityText } from '../../core/quantity/format-quantity.ts';
import type { Reading } from '../../core/scene/reading.ts';
import type { Scene } from '../../core/scene/scene.ts';
import { sceneTexts as texts } from './scene-texts.ts';

/** A part in words with what the reading says of it: "Panel A1, underside, 6 mm: 0.87". Empty for none. */
export function titleWithValue(scene: Scene, reading: Reading | null, id: string | null): string {
  const part = scene.parts.find((other) => other.id === id);
  if (!part) return '';
  const value = reading?.values.get(part.id);
  if (!reading || value === undefined) return part.title;
  const verdict = reading.verdicts.get(part.id);
  const words = [
    ...(value === null ? [] : [quantityText(value, reading.unit, 3)]),
    ...(verdict ? [texts.verdict[verdict]] : value === null ? [texts.legend.unjudged] : []),
  ];
  return `${part.title}: ${words.join(', ')}`;
}
