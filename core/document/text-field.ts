import * as z from 'zod';

/** One line in any script; control characters would reach a terminal or the note. */
export const text = z
  .string()
  .min(1)
  .max(200)
  .regex(/^\P{Cc}*$/u, 'a text is one line, without control characters')
  .regex(/\S|^$/, 'a text is more than blanks');
