import type { RowView } from '../../core/engine/result-view.ts';
import { useWorkbench } from './workbench.ts';

/** Opens a check where all checks stand; the scene turns to its place. */
export function openCheck({ id, place, situation }: Pick<RowView, 'id' | 'place' | 'situation'>): void {
  useWorkbench.setState({ sheet: 'strength', openCheck: { check: id, place, situation }, selection: place });
}
