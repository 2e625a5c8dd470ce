import type { HollowSection } from './rows.ts';

/** Around the bore, m: a rectangle with rounded corners, a circle where they meet. */
export const innerPerimeter = ({ height, width, nominalWall, innerRadius }: HollowSection): number =>
  2 * (height + width) - 8 * nominalWall - (8 - 2 * Math.PI) * innerRadius;
