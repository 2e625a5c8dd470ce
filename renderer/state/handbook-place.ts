import type { ChapterId } from '../../core/handbook/handbook.ts';
import { useWorkbench } from './workbench.ts';

export type ChapterName = ChapterId | 'keys';

/** Whether the handbook lies open, and where: closing it keeps the place. `entry` null: the whole chapter. */
export interface HandbookPlace {
  readonly isOpen: boolean;
  readonly chapter: ChapterName;
  readonly entry: string | null;
}

/** Opens the handbook where it was last, or at a chapter or an entry of it. It takes the place of the picture, so a wide sheet gives way. */
export function openHandbook(chapter?: ChapterName, entry: string | null = null): void {
  useWorkbench.setState(({ handbook }) => ({
    handbook: chapter ? { isOpen: true, chapter, entry } : { ...handbook, isOpen: true },
    wide: false,
    dialog: null,
  }));
}

export const closeHandbook = (): void =>
  useWorkbench.setState(({ handbook }) => ({ handbook: { ...handbook, isOpen: false } }));
