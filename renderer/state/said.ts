import { Refusal } from '../../core/refusal.ts';
import { notify } from './workbench.ts';

/** Says a refusal at the window's edge; anything else is a fault of ours and goes on up. */
export async function said(work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    notify('loud', error);
  }
}
