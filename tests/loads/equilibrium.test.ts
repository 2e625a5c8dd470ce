import { describe, expect, it } from 'vitest';
import { randomDocument } from '../geometry/random-document.ts';
import { seeded } from '../geometry/seeded.ts';
import { loadedPlate } from './loaded-plate.ts';
import { allCases, hungBy, plates, waterOnly } from './plates.ts';

/** Newton's laws are the reference here: what acts and what balances it leave nothing over. */
const nothing = 1e-9;

describe.each(Object.entries(plates))('a plate with %s', (_, document) => {
  const { report, geometry } = loadedPlate(document);
  const solved = report.situations.filter(({ balance }) => balance.terms.length > 0);

  it('is in equilibrium in every situation, forces and moments', () => {
    expect(solved.length).toBeGreaterThanOrEqual(4);
    for (const { id, balance } of solved) {
      expect(balance.residual, id).toBeLessThan(nothing);
      expect(balance.momentResidual, id).toBeLessThan(nothing);
      const sum = balance.terms.reduce((s, { force }) => s + force, 0);
      expect(Math.abs(sum), id).toBeLessThan(nothing * Math.max(...balance.terms.map(({ force }) => Math.abs(force))));
    }
  });

  it('shares the whole force, by area and by shape', () => {
    for (const of of ['area', 'shape'] as const) {
      const sum = [...report.shares.values()].reduce((s, share) => s + share[of], report.tubeShare[of]);
      expect(Math.abs(sum - 1)).toBeLessThan(nothing);
    }
    expect([...report.shares.keys()].sort()).toEqual(geometry.panels.flatMap(({ bays }) => bays).sort());
  });

  it('gives every tube finite forces and keeps its moment within the bound by statics', () => {
    for (const { id, tubes } of solved)
      for (const [tube, forces] of tubes) {
        for (const value of Object.values(forces))
          expect(Number.isFinite(value) && value >= 0, `${id} ${tube}`).toBe(true);
        expect(forces.moment, `${id} ${tube}`).toBeLessThanOrEqual(forces.momentBound * (1 + 1e-9));
        expect(forces.momentWithShear).toBeLessThanOrEqual(forces.moment);
        expect(forces.shearWithMoment).toBeLessThanOrEqual(forces.shear);
      }
  });

  it('names every situation once, and says of each that is not judged what is missing', () => {
    const ids = report.situations.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const situation of report.situations)
      if (situation.balance.terms.length === 0) expect(situation.missing).toBeTruthy();
  });
});

it('is in equilibrium for 60 random grids of both arrangements, hung at random places', () => {
  for (let seed = 1; seed <= 60; seed++) {
    const { grid } = randomDocument(seed);
    const next = seeded(1000 + seed);
    const [ys, xs] = [grid.mainTubes, grid.crossTubes].map(({ tubes }) => tubes!.map(({ at }) => at.si));
    const mains = [ys![0]!, ys!.at(-1)!];
    const attachments = Array.from({ length: 1 + Math.floor(next() * 4) }, (_, i) => ({
      id: `S${i}`,
      x: `${xs![0]! + ((i >> 1) * 0.6 + 0.3 * next()) * (xs!.at(-1)! - xs![0]!)} m`,
      y: `${mains[i % 2]} m`,
    }));
    const kind = seed % 3 === 0 ? 'strut' : attachments.length === 1 ? 'line' : 'bridle';
    const { report } = loadedPlate(
      randomDocument(seed, {
        changes: { ...hungBy(kind, attachments), loads: { ...allCases.loads, deck: null, ...waterOnly.loads } },
      }),
    );
    for (const { id, balance, tubes } of report.situations) {
      expect(balance.residual, `seed ${seed} ${id}`).toBeLessThan(nothing);
      expect(balance.momentResidual, `seed ${seed} ${id}`).toBeLessThan(nothing);
      for (const { moment, momentBound } of tubes.values())
        expect(moment, `seed ${seed} ${id}`).toBeLessThanOrEqual(momentBound * (1 + 1e-9));
    }
  }
});
