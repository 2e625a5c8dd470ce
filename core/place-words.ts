import type { Model } from './model.ts';

/** A place's id in words: "bay A3", "main tube A", "attachment S1". */
export function placeWords(model: Model, place: string): string {
  if (model.bays.has(place)) return `bay ${place}`;
  const tube = model.tubes.get(place);
  if (tube) return `${tube.set} tube ${place}`;
  if (model.geometry.crossings.some((crossing) => crossing.id === place)) return `crossing ${place}`;
  const { suspension, padEyes } = model.document.grid;
  if (suspension.attachments.some((point) => point.id === place)) return `attachment ${place}`;
  if (padEyes?.points.some((point) => point.id === place)) return `pad eye ${place}`;
  if (model.panels.has(place)) return `panel ${place}`;
  return place;
}
