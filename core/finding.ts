/** Something the engineer must see that is not a check's verdict: a place, what was found, what would mend it. */
export interface Finding {
  /** Kebab-case kind, for example `overlap-past-tube`. */
  readonly id: string;
  /** What the finding is about: a bay, panel, tube, attachment, load case or document field. */
  readonly place: string;
  readonly text: string;
  readonly mend: string;
}
