import { refusal } from '../refusal.ts';
import type { Plan } from './lattice/plan.ts';

/** A plan as a file gives it: rectangles [x0, y0, x1, y1] in m, holes [x, y, diameter] and the height of the edges if any, density in kg/m³. */
export interface PlanFile {
  readonly plan: Plan;
  readonly density: number;
}

/** Reads a plan. Refuses what is no such JSON, names the rectangle that is wrong, and says what a field is that it does not know. */
export function readPlan(text: string): PlanFile {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    throw refusal({ what: 'The plan is no JSON', mend: `Write ${example}.` });
  }
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    throw refusal({ what: 'The plan is no object', mend: `Write ${example}.` });
  const given = raw as Record<string, unknown>;
  const strange = Object.keys(given).find((key) => !['rectangles', 'density', 'holes', 'thickness'].includes(key));
  if (strange !== undefined)
    throw refusal({ what: `A plan has no “${strange}”`, where: { path: strange }, mend: 'It has "rectangles", "density", "holes" and "thickness".' }); // prettier-ignore
  const rows = (key: 'rectangles' | 'holes', length: number, mend: string): number[][] => {
    const list = given[key] ?? [];
    if (!Array.isArray(list)) throw refusal({ what: `“${key}” is no list`, where: { path: key }, mend });
    if (list.length > 2000)
      throw refusal({ what: `The plan has ${list.length} ${key}, the limit is 2000`, where: { path: key }, mend: 'Join them.' }); // prettier-ignore
    return list.map((row: unknown, k) => {
      if (
        !Array.isArray(row) ||
        row.length !== length ||
        !row.every((v) => typeof v === 'number' && Number.isFinite(v))
      )
        throw refusal({
          what: `“${key}” has a row that is not ${length} numbers`,
          where: { path: `${key}.${k}` },
          mend,
        });
      return row as number[];
    });
  };
  const rectangles = rows('rectangles', 4, 'Give [x0, y0, x1, y1] in metres.').map(([x0, y0, x1, y1], k) => {
    if (!(x1! > x0! && y1! > y0!))
      throw refusal({ what: `A rectangle from (${x0}, ${y0}) to (${x1}, ${y1}) has no area`, where: { path: `rectangles.${k}` }, mend: 'Give [x0, y0, x1, y1] with x0 < x1 and y0 < y1.' }); // prettier-ignore
    return { x0: x0!, y0: y0!, x1: x1!, y1: y1! };
  });
  if (rectangles.length === 0)
    throw refusal({ what: 'The plan has no rectangles', where: { path: 'rectangles' }, mend: `Write ${example}.` });
  const holes = rows('holes', 3, 'Give [x, y, diameter] in metres.').map(([x, y, diameter], k) => {
    if (!(diameter! > 0)) throw refusal({ what: `A hole of ${diameter} m is none`, where: { path: `holes.${k}` }, mend: 'Give a diameter above zero.' }); // prettier-ignore
    return { x: x!, y: y!, diameter: diameter! };
  });
  const { density, thickness = 0 } = given;
  if (typeof density !== 'number' || !(density > 0 && density < 20_000))
    throw refusal({ what: 'The plan has no density of the water', where: { path: 'density' }, mend: 'Give "density": 1025, in kg/m^3.' }); // prettier-ignore
  if (typeof thickness !== 'number' || !(thickness >= 0 && thickness < Infinity))
    throw refusal({ what: 'The thickness is no length', where: { path: 'thickness' }, mend: 'Give the height of the edges in metres, or leave it out: thin.' }); // prettier-ignore
  return { plan: { rectangles, holes, thickness }, density };
}

const example = '{ "rectangles": [[0, 0, 2, 1]], "density": 1025 }';
