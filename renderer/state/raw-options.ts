import { optionsOf, type RawOption } from '../../core/document/edit.ts';
import { none } from './none.ts';
import { useWorkbench } from './workbench.ts';

/** Options of the open document as they stand in it; none where the document holds no list of them. */
export function rawOptions(): readonly RawOption[] {
  const { document } = useWorkbench.getState();
  return document ? optionsOf(document.raw) : none;
}
