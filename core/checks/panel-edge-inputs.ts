import { missing, type Input, type Step } from './check.ts';
import { panelAt, spansAt } from './field-inputs.ts';
import { sectionAtEnd, tubeAt } from './tube-inputs.ts';

/** Held (1) or hinged (0), as the design relies on. */
export const h: Input = {
  unit: '1',
  meaning: 'edges relied on as held (1) or hinged (0)',
  from: 'document: designs',
  read: (model, bay) => (panelAt(model, bay).design.edges === 'held' ? 1 : 0),
};

/** What the edges of a field on four sides lean on. */
export const EI_edge: Input = {
  unit: 'kN*m^2',
  meaning:
    'bending stiffness of the most limber tube along the edges, halved because the next field leans on it too, end of life',
  from: 'catalogue: sections; document: corrosion',
  read: (model, bay) => {
    const { main, cross } = model.bays.get(bay) ?? { main: [], cross: [] };
    const stiffness = [...main, ...cross].map(
      (id) => (tubeAt(model, id).material.youngModulus * sectionAtEnd(model, id).inertiaY) / 2,
    );
    return stiffness.length ? Math.min(...stiffness) : missing('the tubes along the edges of the panel');
  },
};

/** Stiffness of the tubes over that of the panel. Symbols: those of `fieldInputs`, and EI_edge. */
export const edgeStiffness: Step = {
  symbol: 'g',
  kernel: 'plate.onEdgeBeams.g',
  arguments: ['a', 'b', 't', 'E', 'nu', 'p', 'EI_edge'],
  unit: '1',
  meaning: 'stiffness of the tubes over that of the panel, E I / (s D) with s the shorter side',
};

/** Edges bound a panel as lines only if their supports hardly sink: below this the plate on edge beams was not compared. */
export const edgesHoldAsLines = {
  holds: 'g >= 0.5',
  otherwise: 'the tubes are too limber beside the panel to hold its edges as lines: E I / (s D) is below 0.5',
};

/** For a field held by two opposite sides: span from support to support, and width along the supports. */
export const stripSpan = {
  L: {
    unit: 'mm',
    meaning: 'span between the two supports',
    from: 'geometry',
    read: (model, bay, situation) => {
      const { a, b, supports } = spansAt(model, bay, situation);
      return supports === 'cross tubes' ? a : b;
    },
  },
  B: {
    unit: 'mm',
    meaning: 'width of the panel along the supports',
    from: 'geometry',
    read: (model, bay, situation) => {
      const { a, b, supports } = spansAt(model, bay, situation);
      return supports === 'cross tubes' ? b : a;
    },
  },
} as const satisfies Record<string, Input>;

export const thinPlateCaution =
  'Small deflections: beyond half the thickness the panel stretches and bends less than computed (on edges that slide, with sides of 1 : 3 to 1 : 5, up to 3 % more), which is safe for the panel alone; the pull on its fixings then grows, see the bolts in shear.';
