import type { SolvedLoading } from '../solve-plate.ts';
import type { FixingForces } from './fixing-forces.ts';

type Kind = keyof FixingForces['largest'];

/** The largest force of one kind over several solved loadings, with the load case, loading and variant that it comes from. */
export interface WorstFixing<K extends Kind> {
  readonly force: NonNullable<FixingForces['largest'][K]>;
  readonly situation: string;
  readonly loading: string;
  readonly variant: number;
}

export type WorstFixings = { readonly [K in Kind]: WorstFixing<K> | null };

const sizes: { readonly [K in Kind]: (force: NonNullable<FixingForces['largest'][K]>) => number } = {
  pull: ({ pull }) => pull,
  shear: ({ shear }) => shear,
  weld: ({ resultant }) => resultant,
  contact: ({ force }) => force,
  support: ({ along }) => Math.abs(along),
};

/** Largest bolt pull, bolt shear, weld, contact and support force of all loadings given; null where a kind never occurs. */
export function worstFixings(
  all: readonly { readonly solved: SolvedLoading; readonly forces: FixingForces }[],
): WorstFixings {
  const worst = <K extends Kind>(kind: K): WorstFixing<K> | null => {
    let most: WorstFixing<K> | null = null;
    for (const { solved: { situation, loading, variant }, forces } of all) {
      const force = forces.largest[kind];
      if (force === null || (most !== null && sizes[kind](force) <= sizes[kind](most.force))) continue;
      most = { force, situation: situation.id, loading, variant };
    }
    return most;
  }; // prettier-ignore
  return {
    pull: worst('pull'),
    shear: worst('shear'),
    weld: worst('weld'),
    contact: worst('contact'),
    support: worst('support'),
  };
}
