import { fieldWords } from './document/field-words.ts';
import type { Model } from './model.ts';
import { stageTitles } from './recovery/stage-titles.ts';

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
  if (Object.hasOwn(stageTitles, place)) return stageTitles[place]!.toLowerCase();
  // A finding may be of a field of the document: “designs.underside.thickness”.
  return place.includes('.') ? fieldWords(place) : place;
}

/** What kind of thing a place is; `plate` for what is none of its parts. */
export type PlaceKind = 'bay' | 'panel' | 'tube' | 'crossing' | 'attachment' | 'pad eye' | 'plate';

export function placeKind(model: Model, place: string): PlaceKind {
  if (model.bays.has(place)) return 'bay';
  if (model.tubes.has(place)) return 'tube';
  if (model.panels.has(place)) return 'panel';
  const [first, second] = placeWords(model, place).split(' ');
  if (first === 'crossing' || first === 'attachment') return first;
  return first === 'pad' && second === 'eye' ? 'pad eye' : 'plate';
}

/** What is checked and where: "Bolt in tension, bay A3"; a check of the whole plate names no place. */
export const titleAtPlace = (model: Model, title: string, place: string): string =>
  placeKind(model, place) === 'plate' ? title : `${title}, ${placeWords(model, place)}`;
