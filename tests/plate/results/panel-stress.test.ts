import { describe, expect, it } from 'vitest';
import type { Model } from '../../../core/model.ts';
import { hingedPlate } from '../../../core/solve/hinged-plate.ts';
import { errorEstimate } from '../../../core/plate/results/error-estimate.ts';
import { panelStress } from '../../../core/plate/results/panel-stress.ts';
import type { ReadyPlate, SolvedLoading } from '../../../core/plate/solve-plate.ts';
import type { Structure } from '../../../core/solve/structure/structure.ts';
import { changedPlate } from './support/level-plate.ts';
import { ready, sampleModel, solvedLoading } from './support/solved-sample.ts';
import { withStifferBeams } from './support/with-stiffer-beams.ts';

/** The middle panel of the small sample, welded round its edge to tubes that hardly give, with nothing that holds its
 *  slopes or lies under it: a plate hinged at its outline. */
const welded = (): Model =>
  sampleModel('small', (raw) => {
    (raw as { panels: unknown }).panels = { A2: 'welded-4' };
  });
const onHinges = (structure: Structure): Structure => ({
  ...withStifferBeams(structure, 1e3),
  contacts: [],
  // a little shear keeps the panel in its place, and takes nothing off its bending
  ties: structure.ties.map((tie) => ({ ...tie, stiffness: { axial: 1e9, shear: 1, bending: 0, torsion: 0 } })),
});
const uniform = (model: Model) => {
  const { fields } = model.loads.plate;
  const index = fields.findIndex(({ panel }) => panel.id === 'A2');
  return { index, area: fields[index]!.area };
};

describe('a panel hinged round its outline', () => {
  const model = welded();
  const panel = model.geometry.panels[0]!;
  const { x0, x1, y0, y1 } = panel.outline;
  const solve = (size: number): { plate: ReadyPlate; solved: SolvedLoading } => {
    const plate = changedPlate(model, size, onHinges);
    // its field loads all of its outline, so that the series has its case
    const outline = { ...plate.structure, shells: plate.structure.shells.map((s) => ({ ...s, field: uniform(model).index })) };
    const whole = { ...plate, structure: outline };
    return { plate: whole, solved: solvedLoading(whole, 'service-up', { stage: 'linear' }) };
  }; // prettier-ignore

  it('has the stress of Lévy’s series in its middle, top and bottom, to 0.4 % with cells of 30 mm', () => {
    const { plate, solved } = solve(0.03);
    const { index, area } = uniform(model);
    // what the panel's inertia takes is taken off its pressure
    const p = solved.situation.loadings[0]!.pressures[index]! * (area / ((x1 - x0) * (y1 - y0)));
    const q = p - panel.material.density * panel.thickness * solved.answer.acceleration[2]!;
    expect(q).toBeGreaterThan(100);
    const { nu, E } = plate.structure.shells[0]!;
    const series = hingedPlate({ a: x1 - x0, b: y1 - y0, q, E, t: panel.thickness, nu });
    const [own] = panelStress(plate, solved);
    const middle = own!.nodes.findIndex((n) => {
      const [x, y] = [plate.structure.coordinates[3 * n]!, plate.structure.coordinates[3 * n + 1]!];
      return Math.hypot(x - (x0 + x1) / 2, y - (y0 + y1) / 2) < 0.016;
    });
    // pressed up the top is pulled
    const [Mx, My] = [own!.forces[6 * middle + 3]!, own!.forces[6 * middle + 4]!];
    expect(Math.abs(Mx / series.momentXCentre - 1)).toBeLessThan(0.004);
    expect(Math.abs(My / series.momentYCentre - 1)).toBeLessThan(0.004);
    const σ = (6 / panel.thickness ** 2) * Math.sqrt(Mx ** 2 - Mx * My + My ** 2);
    expect(Math.abs(own!.top[middle]! / σ - 1)).toBeLessThan(0.004);
    expect(Math.abs(own!.bottom[middle]! / σ - 1)).toBeLessThan(0.004);
  });

  it('has an error estimate that halves with the cells', () => {
    const [coarse, fine] = [0.08, 0.04].map((size) => {
      const { plate, solved } = solve(size);
      return errorEstimate(plate, solved);
    });
    expect(coarse!.all).toBeLessThan(0.2);
    const order = Math.log2(coarse!.all / fine!.all);
    expect(order).toBeGreaterThan(0.8);
    expect(order).toBeLessThan(1.6);
    expect(fine!.clear).toBe(fine!.all); // no bolts, no notches
    expect(fine!.panels[0]!.jump).toBeLessThan(coarse!.panels[0]!.jump);
  });
});

/** The small sample with displacements that are not solved but put on. */
const putOn = (plate: ReadyPlate, of: (x: number, y: number) => readonly number[]): SolvedLoading => {
  const { coordinates } = plate.structure;
  const u = new Float64Array(2 * coordinates.length);
  for (let n = 0; 3 * n < coordinates.length; n++) u.set(of(coordinates[3 * n]!, coordinates[3 * n + 1]!), 6 * n);
  return { answer: { u } } as unknown as SolvedLoading;
};

describe('constant states put on a panel', () => {
  const plate = ready(sampleModel('small'), 0.15);
  const { E, nu, thickness: t } = plate.structure.shells[0]!;
  const D = (E * t ** 3) / (12 * (1 - nu ** 2));

  it('curvature: M = -D (w,xx + ν w,yy) everywhere, and no error', () => {
    const [κ, λ, τ] = [2e-3, -1e-3, 7e-4];
    const bent = putOn(plate, (x, y) => [0, 0, (κ * x * x + λ * y * y) / 2 + τ * x * y, λ * y + τ * x, -(κ * x + τ * y), 0]);
    const want = [0, 0, 0, -D * (κ + nu * λ), -D * (λ + nu * κ), -D * (1 - nu) * τ];
    for (const { forces, cells } of panelStress(plate, bent))
      for (const values of [forces, cells])
        values.forEach((value, i) => expect(Math.abs(value - want[i % 6]!)).toBeLessThan(1e-8 * D * κ));
    expect(errorEstimate(plate, bent).all).toBeLessThan(1e-8);
  }); // prettier-ignore

  it('stretch: N by Hooke’s law of plane stress, principal stresses and their direction', () => {
    const γ = 3e-5;
    const stretched = putOn(plate, (x, y) => [(γ * y) / 2, (γ * x) / 2, 0, 0, 0, 0]);
    const τ = (E / (2 * (1 + nu))) * γ;
    for (const { largest } of panelStress(plate, stretched)) {
      const { stress } = largest!;
      expect(stress.xy / τ).toBeCloseTo(1, 8);
      expect(stress.largest / τ).toBeCloseTo(1, 8);
      expect(stress.least / τ).toBeCloseTo(-1, 8);
      expect(stress.angle).toBeCloseTo(Math.PI / 4, 8);
      expect(stress.vonMises / τ).toBeCloseTo(Math.sqrt(3), 8);
    }
  });
});

describe('hot places', () => {
  const model = sampleModel('small', (raw) => {
    const designs = (raw as unknown as { designs: Record<string, Record<string, unknown>> }).designs;
    designs['bolted-5']!['cornerNotch'] = '30 mm';
  });
  const plate = ready(model, 0.1);
  const solved = solvedLoading(plate, 'service-down');

  it('reads no stress within a washer’s diameter and 2t of a bolt, or within 2t of a notch’s corner', () => {
    const { coordinates } = plate.structure;
    for (const { id, hot, nodes, hotSpots, largest, top, bottom } of panelStress(plate, solved)) {
      const panel = model.panels.get(id)!;
      // M12: washer of 24 mm (ISO 7089); 24 + 2 × 5
      for (const { x, y } of panel.bolts) expect(Math.hypot(largest!.x - x, largest!.y - y)).toBeGreaterThan(0.034);
      const apart = (n: number, x: number, y: number) =>
        Math.hypot(coordinates[3 * n]! - x, coordinates[3 * n + 1]! - y);
      nodes.forEach((n, i) => {
        const near = panel.bolts.some(({ x, y }) => apart(n, x, y) <= 0.034);
        if (near) expect(hot[i]).toBe(1);
      });
      expect(hotSpots.filter(({ kind }) => kind === 'notch corner')).toHaveLength(4);
      expect(hotSpots).toHaveLength(panel.bolts.length + 4);
      const peak = Math.max(...top, ...bottom);
      expect(largest!.stress.vonMises).toBeLessThan(peak);
      for (const spot of hotSpots) {
        expect(spot.cells).toBeGreaterThan(0);
        expect(spot.stress.vonMises).toBeGreaterThan(0);
        expect(spot.stress.vonMises).toBeLessThan(peak);
      }
    }
  });

  it('does not spare the place of a bolt that is lost', () => {
    const lost = model.panels.get('A1')!.bolts[3]!.id;
    const without = ready(model, 0.2, new Set([lost]));
    const ids = panelStress(without, solvedLoading(without, 'service-down', { stage: 'linear' }))[0]!.hotSpots.map(
      ({ id }) => id,
    );
    expect(ids).not.toContain(lost);
    expect(ids).toContain(model.panels.get('A1')!.bolts[4]!.id);
  });

  it('puts the four notch corners where the contour turns in', () => {
    const [{ hotSpots }] = panelStress(plate, solved) as [ReturnType<typeof panelStress>[number]];
    const contour = model.geometry.panels[0]!.contour;
    for (const { kind, x, y } of hotSpots)
      if (kind === 'notch corner')
        expect(Math.min(...contour.map(([cx, cy]) => Math.hypot(cx - x, cy - y)))).toBeLessThan(1e-9);
  });

  it('counts no cell at a bolt among the clear ones of the error estimate', () => {
    const { all, clear, panels } = errorEstimate(plate, solved);
    expect(clear).toBeLessThan(all);
    expect(clear).toBeGreaterThan(0);
    expect(panels.map(({ id }) => id)).toEqual(['A1', 'A2', 'A3']);
  });

  it('but counts the strip between bolts, where a panel is clamped: a node midway is clear on any mesh', () => {
    const middle = ready(sampleModel('middle'), 0.24);
    const [panel] = panelStress(middle, solvedLoading(middle, 'service-down', { stage: 'linear' }));
    const row = middle.model.geometry.panels
      .find(({ id }) => id === panel!.id)!
      .bolts.filter(({ side }) => side === 'mainLow')
      .sort((a, b) => a.x - b.x);
    expect(row.length).toBeGreaterThan(5);
    for (const [k, bolt] of row.slice(1).entries()) {
      const [x, y] = [(row[k]!.x + bolt.x) / 2, bolt.y];
      const { coordinates } = middle.structure;
      const at = panel!.nodes.findIndex((n) => Math.hypot(coordinates[3 * n]! - x, coordinates[3 * n + 1]! - y) < 1e-9);
      expect(at, `midway at x ${x}`).toBeGreaterThanOrEqual(0);
      expect(panel!.hot[at]).toBe(0);
    }
  });
});
