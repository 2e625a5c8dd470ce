import type { Bay, Geometry } from './geometry.ts';

/** Rectangles between the tubes by bay. */
export const bayOpenings = ({ bays }: Pick<Geometry, 'bays'>): Readonly<Record<string, Bay['opening']>> =>
  Object.fromEntries(bays.map(({ id, opening }) => [id, opening]));

/** True where a panel closes half of the bay or more. */
export const isClosed = ({ openArea, opening: o }: Bay): boolean => openArea <= 0.5 * (o.x1 - o.x0) * (o.y1 - o.y0);
