/**
 * An equation as a tree of boxes. The window shows it as MathML, the note sets it with the glyphs of an
 * embedded mathematics font, the command line prints it as text: one tree, three readings.
 */
export type Box =
  | { readonly kind: 'row'; readonly boxes: readonly Box[] }
  /** Letters of a symbol (italic), of a unit or word (upright), a number, or an operator with space around it. */
  | { readonly kind: 'symbol' | 'text' | 'number' | 'operator'; readonly text: string }
  | { readonly kind: 'fraction'; readonly over: Box; readonly under: Box }
  | { readonly kind: 'root'; readonly body: Box }
  | { readonly kind: 'script'; readonly base: Box; readonly sub?: Box; readonly sup?: Box }
  | { readonly kind: 'bracket'; readonly body: Box; readonly shape: 'round' | 'bar' }
  /** A choice: value when condition, one row each; the last row is "otherwise". */
  | { readonly kind: 'cases'; readonly rows: readonly { readonly value: Box; readonly when: Box }[] };
