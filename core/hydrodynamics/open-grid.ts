import type { Model } from '../model.ts';

/** The grid with every panel left out. */
export const openGrid = ({ geometry }: Pick<Model, 'geometry'>): Pick<Model, 'geometry'> => ({
  geometry: {
    ...geometry,
    panels: [],
    areas: { ...geometry.areas, solid: geometry.areas.tubes, open: geometry.areas.outline - geometry.areas.tubes },
  },
});
