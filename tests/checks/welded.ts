/** A change of the invented document: its panel design welded, with differences. */
export const welded = (fixing: Record<string, unknown> = {}, design: Record<string, unknown> = {}) => ({
  designs: {
    deck: {
      ...design,
      fixing: {
        ...{ kind: 'welded', throat: '4 mm', pattern: 'all round' },
        ...{ bolt: null, class: null, pitch: null, edgeDistance: null, shear: null, into: null },
        ...fixing,
      },
    },
  },
});
