import { readDocumentText } from '../../core/document/read-document.ts';
import { search } from '../../core/options/search/search.ts';
import { middleSpace } from './middle-space.ts';
import { sample } from './sample.ts';

/** Bytes in use after 10,000 and after 50,000 options of the middle sample, garbage collected. Needs --expose-gc. */
export async function heapOfSearch(): Promise<{ readonly early: number; readonly late: number }> {
  const problem = middleSpace(readDocumentText(await sample('middle')), 6);
  const inUse = (): number => {
    globalThis.gc!();
    return process.memoryUsage().heapUsed;
  };
  let early: number | null = null;
  for (const { decided } of search(problem)) {
    if (early === null && decided >= 10_000) early = inUse();
    if (early !== null && decided >= 50_000) return { early, late: inUse() };
  }
  throw new Error('The search ended before 50,000 options');
}
