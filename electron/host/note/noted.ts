import type { Appraisal } from '../../../core/appraise.ts';
import type { Register } from '../../../core/issue/register.ts';
import type { Note } from '../../../core/note/note.ts';
import { compare } from '../../../core/options/compare.ts';
import type { OpenedDocument } from '../open-document.ts';
import { solvedFor, type Heard } from '../solved-for.ts';

export interface Noted {
  readonly appraisal: Appraisal;
  readonly pdf: Uint8Array;
  /** Characters that no font here has, as U+ code points. */
  readonly unprintable: readonly string[];
}

/**
 * The check note of one option as PDF. The same document, option, register and version give the same bytes.
 * `around`: what watches the note while it is set.
 */
export async function noted(
  { raw, document, bytes }: OpenedDocument,
  { option, solver, register }: { option: string | null; solver: boolean; register: Register },
  on: Heard,
  around: (note: Note) => Note = (note) => note,
): Promise<Noted> {
  const comparison = compare(raw, document, null, (id) => solvedFor(raw, document, id, solver, on));
  const appraisal = comparison.appraisals.find(({ optionId }) => optionId === option)!;
  // Only notes need fonts and the PDF library: other commands start faster without.
  const [{ checkNote }, { writeNote }, { unprintable }] = await Promise.all([
    import('../../../core/note/check-note.ts'),
    import('./write-note.ts'),
    import('./unprintable.ts'),
  ]);
  const note = checkNote(raw, appraisal, comparison, bytes, register);
  return { appraisal, pdf: await writeNote(around(note)), unprintable: unprintable(note) };
}
