import type { PlateShape } from './plate-shape.ts';

/** A quantity that varies within panels and along tubes. `on`: where it is known. */
export interface FieldTitle {
  readonly id: FieldId;
  readonly title: string;
  /** Unit of print in the metric system, mathjs words; values are SI. */
  readonly unit: string;
  readonly on: 'panels' | 'tubes' | 'both';
  /** What it shows and how, a sentence. */
  readonly remark: string;
}

export const panelFields = ['vonMisesTop', 'vonMisesBottom', 'largerTop', 'largerBottom', 'lesserTop', 'lesserBottom'] as const; // prettier-ignore
export const tubeFields = ['My', 'Vz', 'N', 'T', 'Mz', 'Vy', 'fibre'] as const;
export type PanelFieldId = (typeof panelFields)[number];
export type TubeFieldId = (typeof tubeFields)[number];
export type FieldId = 'rise' | PanelFieldId | TubeFieldId;

const stress = (title: string, remark: string) => ({ title, unit: 'MPa', on: 'panels' as const, remark });
const force = (title: string, unit: string, remark: string) => ({ title, unit, on: 'tubes' as const, remark });

const words: Readonly<Record<FieldId, Omit<FieldTitle, 'id'>>> = {
  rise: { title: 'Rise', unit: 'mm', on: 'both', remark: 'Up is positive; of panels’ mid-planes and tubes’ axes.' },
  vonMisesTop: stress('Von Mises stress, top face', 'Of the top face, drawn on both.'),
  vonMisesBottom: stress('Von Mises stress, bottom face', 'Of the bottom face, drawn on both.'),
  largerTop: stress('Larger principal stress, top face', 'Tension is positive; of the top face, drawn on both.'),
  largerBottom: stress('Larger principal stress, bottom face', 'Tension is positive; of the bottom face, drawn on both.'),
  lesserTop: stress('Lesser principal stress, top face', 'Tension is positive; of the top face, drawn on both.'),
  lesserBottom: stress('Lesser principal stress, bottom face', 'Tension is positive; of the bottom face, drawn on both.'),
  My: force('Tube moment, upright', 'kN*m', 'Positive where the top is pulled; in bands along each tube.'),
  Vz: force('Tube shear, upright', 'kN', 'What the part beyond does to the part before, up positive; in bands.'),
  N: force('Tube pull', 'kN', 'Tension is positive; in bands along each tube.'),
  T: force('Tube torque', 'kN*m', 'About the axis; in bands along each tube.'),
  Mz: force('Tube moment, in plan', 'kN*m', 'In bands along each tube.'),
  Vy: force('Tube shear, in plan', 'kN', 'In bands along each tube.'),
  fibre: force('Tube stress, far fibre', 'MPa', 'Von Mises with torsion, elastic; in bands along each tube.'),
}; // prettier-ignore

/** All fields, in the order in which they are offered. */
export const fieldTitles: readonly FieldTitle[] = (['rise', ...panelFields, ...tubeFields] as const).map((id) => ({ id, ...words[id] })); // prettier-ignore

/** Values of one loading at the nodes of each panel and the stations of each tube, in the shape's order. */
export interface FieldValues {
  readonly panels: readonly (Readonly<Record<PanelFieldId, Float32Array>> & {
    /** 1 where stress is no measure: at bolts and inner corners. */
    readonly hot: Uint8Array;
  })[];
  readonly tubes: readonly (Readonly<Record<TubeFieldId, Float32Array>> & {
    /** Largest by size along the tube, between these stations too, and its place along it, m. */
    readonly peaks: Readonly<Record<TubeFieldId, { readonly value: number; readonly at: number }>>;
  })[];
}

/** A value with its place. x, y: m in plan. `loading`: number of the loading that gives it. */
export interface FieldExtreme {
  readonly value: number;
  readonly part: string;
  readonly x: number;
  readonly y: number;
  readonly loading: number;
}

/** One field as it is drawn: of one loading, or of several the value that is largest by size at each place. */
export interface Field extends FieldTitle {
  /** In the shape's order; null where the field says nothing. */
  readonly panels: readonly Float32Array[] | null;
  readonly tubes: readonly Float32Array[] | null;
  readonly hot: readonly Uint8Array[];
  /** Hot places left out. */
  readonly highest: FieldExtreme | null;
  readonly lowest: FieldExtreme | null;
  readonly hasHot: boolean;
}

export interface FieldSource {
  readonly shape: PlateShape;
  readonly fields: FieldValues;
}

/** A field over loadings of one plate (the same mesh for all). */
export function fieldOf(id: FieldId, of: readonly FieldSource[]): Field {
  const title = { id, ...words[id] };
  const isStress = title.on === 'panels';
  const [first] = of;
  const hot = first!.fields.panels.map((panel) => panel.hot);
  let highest: FieldExtreme | null = null;
  let lowest: FieldExtreme | null = null;
  const see = (value: number, loading: number, part: string, [x, y]: readonly [number, number]): void => {
    if (highest && lowest && value <= highest.value && value >= lowest.value) return;
    const here = { value, part, x, y, loading };
    if (!highest || value > highest.value) highest = here;
    if (!lowest || value < lowest.value) lowest = here;
  };
  const merged = (kind: 'panels' | 'tubes', i: number): Float32Array => {
    const { id: part, places } = first!.shape[kind][i]!;
    const lists = of.map((source) => valuesOf(source, id, kind, i));
    const most = new Float32Array(lists[0]!.length);
    const name = `${kind === 'panels' ? 'panel' : 'tube'}:${part}`;
    for (let k = 0; k < most.length; k++) {
      let from = 0;
      for (let l = 1; l < lists.length; l++) if (Math.abs(lists[l]![k]!) > Math.abs(lists[from]![k]!)) from = l;
      most[k] = lists[from]![k]!;
      if (!isStress || !hot[i]![k]) see(most[k]!, from, name, [places[3 * k]!, places[3 * k + 1]!]);
    }
    if (kind === 'tubes' && id !== 'rise')
      of.forEach(({ shape, fields }, l) => {
        const { value: peak, at } = fields.tubes[i]!.peaks[id as TubeFieldId];
        const value = Math.fround(peak); // as its neighbours are kept
        const { along, places: own } = shape.tubes[i]!;
        see(value, l, name, along[0] === 1 ? [at, own[1]!] : [own[0]!, at]);
      });
    return most;
  };
  const all = (kind: 'panels' | 'tubes') => first!.shape[kind].map((_, i) => merged(kind, i));
  return {
    ...title,
    panels: title.on === 'tubes' ? null : all('panels'),
    tubes: title.on === 'panels' ? null : all('tubes'),
    hot,
    highest,
    lowest,
    hasHot: isStress && hot.some((list) => list.includes(1)),
  };
}

function valuesOf({ shape, fields }: FieldSource, id: FieldId, kind: 'panels' | 'tubes', i: number): Float32Array {
  if (id === 'rise') return shape[kind][i]!.moves.filter((_, k) => k % 3 === 2);
  const own = fields[kind][i]! as unknown as Readonly<Record<string, Float32Array>>;
  return own[id]!;
}

/** What the map spans: from nought, or the lowest value if that is below, to the highest. */
export function fieldRange({ highest, lowest }: Pick<Field, 'highest' | 'lowest'>): { readonly from: number; readonly to: number } {
  const from = Math.min(0, lowest?.value ?? 0);
  const to = Math.max(0, highest?.value ?? 0);
  return { from, to: to > from ? to : from + 1 };
} // prettier-ignore
