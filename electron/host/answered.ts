import { granted, refused, type Answer } from '../../core/host/answer.ts';
import { Refusal } from '../../core/refusal.ts';

/** Runs a call of the host: its value, or its refusal as a value. A fault of ours is told as one, and printed. */
export async function answered<T>(work: () => T | Promise<T>): Promise<Answer<T>> {
  try {
    return granted(await work());
  } catch (error) {
    if (error instanceof Refusal) return refused(error.all[0]!);
    console.error(error);
    return refused({
      what: `A fault in Stillplate itself: ${error instanceof Error ? error.message.split('\n')[0] : String(error)}`,
      mend: 'Nothing was changed. Please report it; edits that were acknowledged are kept.',
    });
  }
}
