import type { Field } from '../../core/scene/field.ts';
import type { Marks } from '../../core/scene/marks.ts';
import type { PlateShape } from '../../core/scene/plate-shape.ts';

/** What the solver found, as the picture shows it: the plate moved by a scale, a field on it, forces on it. */
export interface BentPicture {
  readonly shape: PlateShape;
  /** Null: drawn where it was. */
  readonly scale: number | null;
  /** To and fro between both ends of the scale. */
  readonly isSwinging: boolean;
  readonly field: Field | null;
  readonly marks: Marks | null;
  /** What moves it: load case, mode or buckling shape; and the rest that has to be said of it. */
  readonly title: string;
  readonly said: string;
  /** In words, how large it is drawn, and the number that goes with it. */
  readonly size: string;
  /** Where field and marks come from, by the field's number of the loading. */
  readonly loadings: readonly string[];
  readonly loadCase: string;
}
