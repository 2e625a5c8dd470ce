import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take half a minute and more, longest first. A new one may be missing here: then it only begins later. */
const longest = [
  'scene/plate-scene',
  'browser/accessibility',
  'journeys/wrong-words',
  'electron/security',
  'engine/memory',
  'build/folder',
  'journeys/solved-numbers',
  'faults/planted',
  'journeys/nothing-lost',
  'journeys/issue',
  'structure/large',
  'electron/main',
  'journeys/first-note',
  'journeys/both-forces',
  'journeys/planted',
  'journeys/search',
  'journeys/hydrodynamics',
  'journeys/two-windows',
  'journeys/whole-plate',
  'search/by-solver',
];

const rank = ({ moduleId }: TestSpecification): number => {
  const at = longest.findIndex((name) => moduleId.endsWith(`/${name}.test.ts`));
  return at < 0 ? longest.length : at;
};

/**
 * Long files begin first, so that none is left to run alone at the end while the other processor waits. A machine that has
 * run them before goes by the times that it measured, one that has not by the sizes of files: by those the longest of all
 * that need no browser, a file of 47 lines, came last.
 */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    return sorted.sort((a, b) => rank(a) - rank(b));
  }
}
