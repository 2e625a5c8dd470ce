/**
 * The look of a note in one place: sizes in points, colours, and the pens of figures. Black on white, one accent,
 * rules thin; nothing is told by colour alone, so a note reads the same from a black-and-white printer.
 */
export const house = {
  paper: { A4: { width: 595.28, height: 841.89 }, letter: { width: 612, height: 792 } },
  /** Wider on the binding side. */
  /** How much higher the first page begins, which has no head. */
  firstPageRise: 30,
  margin: { left: 71, right: 57, top: 82, bottom: 71 },
  ink: '#000000',
  quiet: '#555555',
  hair: '#9a9a9a',
  accent: '#1d4f73',
  accentTint: '#d5e1ea',
  type: {
    plain: { size: 10, leading: 14.2 },
    small: { size: 8.4, leading: 11.4 },
    cell: { size: 9, leading: 12.2 },
    head: { size: 8.4, leading: 11 },
    caption: { size: 8.8, leading: 12 },
    title: { size: 21, leading: 26 },
    h2: { size: 14, leading: 18 },
    h3: { size: 11.4, leading: 15 },
    h4: { size: 10, leading: 14 },
    furniture: { size: 7.8, leading: 10 },
    maths: { size: 10.4, leading: 14 },
  },
  rule: { hair: 0.3, thin: 0.5, firm: 0.9 },
} as const;
export type TypeSize = { readonly size: number; readonly leading: number };
