import type { Note } from '../../../core/note/note.ts';

/** The program as it is named in the title block, the foot and the file's properties: “Stillplate 0.1.0”. */
export const programName = ({ programVersion }: Pick<Note, 'programVersion'>): string =>
  `Stillplate ${programVersion}`.trim();
