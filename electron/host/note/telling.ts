import type { Note, Section } from '../../../core/note/note.ts';

/**
 * The note, telling each time the writer takes the blocks of a section: once to look for characters that no font has,
 * once to set them. What is left then is filling the pages.
 */
export function telling(note: Note, tell: (done: number, of: number, doing: string) => void): Note {
  const count = (sections: readonly Section[]): number =>
    sections.reduce((sum, section) => sum + 1 + count(section.sections ?? []), 0);
  const sections = count(note.sections);
  const of = 2 * sections + 1;
  let done = 0;
  const told = (section: Section): Section => {
    const inside = section.sections?.map(told);
    return {
      ...section,
      ...(inside && { sections: inside }),
      get blocks() {
        done = Math.min(done + 1, 2 * sections);
        tell(done, of, `${done > sections ? 'Setting' : 'Reading'} “${String(section.title).slice(0, 200)}”`);
        return section.blocks;
      },
    };
  };
  return { ...note, sections: note.sections.map(told) };
}
