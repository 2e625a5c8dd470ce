import type { Model } from '../model.ts';
import { placeWords } from '../place-words.ts';

/** A load situation's id as the note's tables say it: "lost bolt row, up". The loads' table tells what each is. */
export function situationWords({ loads }: Model, id: string): string {
  const situation = loads.situations.find((of) => of.id === id);
  if (situation) return `${situation.loadCase}, ${situation.direction}`;
  const end = [loads.swing.up, loads.swing.down].find((of) => of.id === id);
  return end ? end.title.toLowerCase() : id;
}

/** Where a finding was made: a place, or a load situation. */
export const findingPlace = (model: Model, place: string): string =>
  model.loads.situations.some(({ id }) => id === place) ? situationWords(model, place) : placeWords(model, place);
