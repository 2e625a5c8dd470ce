import type { MassPart } from './mass-report.ts';

/** A piece of the plate: what mass, buoyancy and inertia are summed over. SI. */
export interface Body {
  /** Bodies of one name make one line of the report. */
  readonly name: string;
  readonly kind: MassPart['kind'];
  readonly mass: number;
  /** Volume of its material. */
  readonly volume: number;
  readonly centre: Vector;
  /** About its own centre: xx, yy, zz. */
  readonly inertia: Vector;
  /** Stated on top of what is drawn, and not counted on where weight helps. */
  readonly allowance?: true;
  /** The panel that it leaves with. */
  readonly panel?: string;
  /** How much of its volume stands in the bore of a tube, and which. */
  readonly inBore?: { readonly tube: string; readonly volume: number };
}

export type Vector = readonly [x: number, y: number, z: number];

/** Inertia of a straight bar or tube of mass m and length L along x, y or z, with section inertia per mass (m²)
 *  about its horizontal axis (i_h) and its vertical axis (i_v); for a bar along z the two are its x and y axes. */
export function barInertia(axis: 'x' | 'y' | 'z', m: number, L: number, i_h = 0, i_v = 0): Vector {
  const long = (m * L ** 2) / 12;
  if (axis === 'x') return [m * (i_h + i_v), long + m * i_h, long + m * i_v];
  if (axis === 'y') return [long + m * i_h, m * (i_h + i_v), long + m * i_v];
  return [long + m * i_h, long + m * i_v, m * (i_h + i_v)];
}

/** The same body with its mass, volume and inertia times a factor, as another part. */
export function scaled(body: Body, factor: number, as: Pick<Body, 'name' | 'kind' | 'allowance'>): Body {
  const [xx, yy, zz] = body.inertia;
  return {
    ...as,
    mass: factor * body.mass,
    volume: factor * body.volume,
    centre: body.centre,
    inertia: [factor * xx, factor * yy, factor * zz],
    panel: body.panel,
  };
}
