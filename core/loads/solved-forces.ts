import { plateAlone } from '../document/plate-alone.ts';
import type { PlateDocument } from '../document/schema.ts';
import canonicalize from 'canonicalize';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/**
 * What the whole plate's solution hands to the checks: sizes of forces, the largest over all loadings and sets of supports
 * of a situation, contact settled. Plain data, SI: it is made where solvers are known, and read where none is.
 */
export interface SolvedForces {
  /** Of the plate that was solved: see `solvedKey`. */
  readonly key: string;
  readonly mesh: {
    /** Widest cell, m. */
    readonly size: number;
    readonly unknowns: number;
    /** Largest over all loadings, as parts of one: error of the panels' stresses clear of hot places, and what is left of
     *  the balance of forces and moments. */
    readonly stressError: number;
    readonly residual: number;
  };
  readonly situations: Readonly<Record<string, SituationForces>>;
}

export interface SituationForces {
  /** Loadings solved, each on each set of supports. */
  readonly loadings: number;
  /** Contact found its set in every one. */
  readonly settled: boolean;
  readonly tubes: Readonly<Record<string, SolvedTube>>;
  readonly panels: Readonly<Record<string, SolvedPanel>>;
  /** Panels that move freely once a part is lost, and what then moves. */
  readonly free: Readonly<Record<string, string>>;
  readonly crossings: Readonly<Record<string, SolvedCrossing>>;
  /** By attachment or pad eye. */
  readonly legs: Readonly<Record<string, SolvedLeg>>;
  /** Lowest factor by which any of the loadings may grow before something buckles, `within` where nothing does up to there,
   *  and the panel or tube that gives way. Null where the factors did not settle. */
  readonly buckling: { readonly factor: number; readonly within: number; readonly part: string } | null;
}

/** Bending in the upright plane with that in plan added by the stress that it brings, shear likewise; N·m, N; `rise`: m. */
export interface SolvedTube {
  readonly M: number;
  readonly V: number;
  readonly T: number;
  readonly N: number;
  readonly rise: number;
}

export interface SolvedPanel {
  /** Worst bolts, N; null without bolts. */
  readonly pull: { readonly force: number; readonly bolt: string } | null;
  readonly shear: { readonly force: number; readonly bolt: string } | null;
  /** Where the weld carries most, N/m and N; null without a weld. */
  readonly weld: SolvedWeld | null;
  /** Largest von Mises stress clear of hot places, Pa, of bending and stretch, and of the stretch alone; null where all of
   *  the panel is hot. */
  readonly stress: number | null;
  readonly membrane: number | null;
  /** Largest deflection from the motion of the tubes that carry it, m. Null where no four places do. */
  readonly dip: number | null;
}

/** Parts of the force at one point of a weld: `pull` off the tube, `across` it towards the panel, with their signs; `along` it
 *  and the opening moment as sizes. */
export interface SolvedWeld {
  readonly side: string;
  readonly along: number;
  readonly across: number;
  readonly pull: number;
  readonly opening: number;
  /** Resultant with the moment as a force on the throat: what the point was chosen by. */
  readonly use: number;
}

/** Forces of the cross tube (1) and the main tube (0) where their axes meet, N and N·m. */
export interface SolvedCrossing {
  readonly M_1: number;
  readonly V_1: number;
  readonly N_1: number;
  readonly M_0: number;
  readonly N_0: number;
}

/** Pull along the leg, its upright part, and its parts in plan. */
export interface SolvedLeg {
  readonly along: number;
  readonly upright: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Names the plate that forces are of: SHA-256 of everything in an option's document that loads, geometry and stiffness can
 * follow from, in SI. How a quantity was typed, the names of project and designs, designs that no panel has, other options and
 * what is chosen of two demands leave it alone.
 */
export function solvedKey(document: PlateDocument): string {
  const { project: _project, units: _units, paper: _paper, forces, designs, panels, ...rest } = plateAlone(document);
  const placed = Object.fromEntries(Object.entries(panels).map(([bays, design]) => [bays, designs[design] ?? null]));
  const meaning = canonicalize({ ...(inSi({ ...rest, panels: placed }) as object), mesh: forces?.mesh?.si ?? null, losses: forces?.losses ?? false }) as string;
  return bytesToHex(sha256(utf8ToBytes(meaning)));
} // prettier-ignore

/** Each quantity as its value alone. */
function inSi(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inSi);
  if (typeof value !== 'object' || value === null) return value;
  if ('si' in value && 'typed' in value) return value.si;
  return Object.fromEntries(Object.entries(value).map(([key, of]) => [key, inSi(of)]));
}
