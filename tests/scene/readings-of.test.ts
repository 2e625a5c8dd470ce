import { describe, expect, it } from 'vitest';
import { extremesOf } from '../../core/scene/extremes-of.ts';
import { readingsOf } from '../../core/scene/readings-of.ts';
import { sceneOf } from '../../core/scene/scene-of.ts';
import { appraisalOf } from './scene-models.ts';

describe.each([
  ['middle', null],
  ['middle', 'top-4-welded'],
  ['small', null],
] as const)('readings over %s, option %s', (sample, option) => {
  const appraisal = appraisalOf(sample, option);
  const scene = sceneOf(appraisal.model);
  const readings = readingsOf(appraisal, scene);
  const reading = (id: string) => readings.find((r) => r.id === id)!;

  it('name only parts of the scene', () => {
    const known = new Set(scene.parts.map(({ id }) => id));
    for (const { values, verdicts, reasons } of readings)
      for (const id of [...values.keys(), ...verdicts.keys(), ...reasons.keys()]) expect(known.has(id), id).toBe(true);
  });

  it('reach the governing utilisation of strength, and every fail that has a place on the plate', () => {
    const { values, verdicts } = reading('utilisation');
    const judged = appraisal.rows.filter(
      (row) =>
        row.utilisation !== null &&
        !(row.detailing && row.verdict === 'passes') &&
        !/^(hanging|suspension|fatigue|recovery|lift)/.test(row.id),
    );
    expect(extremesOf({ values })!.highest.value).toBe(Math.max(...judged.map((row) => row.utilisation!)));
    const failing = new Set([...verdicts].flatMap(([id, verdict]) => (verdict === 'fails' ? [id] : [])));
    for (const row of appraisal.rows.filter(({ verdict, id }) => verdict === 'fails' && id.startsWith('panel')))
      expect(verdicts.has(`panel:${row.place}`), row.id).toBe(true);
    for (const id of failing) {
      const { place, bays } = scene.parts.find((part) => part.id === id)!;
      expect(
        appraisal.rows.some((row) => row.verdict === 'fails' && (row.place === place || bays.includes(row.place))),
        id,
      ).toBe(true);
    }
  });

  it('give the stress and deflection of each panel that the quantities state', () => {
    for (const [id, name] of [
      ['panel-stress', 'stress'],
      ['panel-deflection', 'deflection'],
    ] as const) {
      const { values } = reading(id);
      for (const panel of appraisal.model.geometry.panels) {
        const stated = panel.bays.flatMap((bay) => appraisal.quantities[`panel.${bay}.${name}`]?.value ?? []);
        expect(values.get(`panel:${panel.id}`) ?? null).toBe(stated.length > 0 ? Math.max(...stated) : null);
      }
    }
  });

  it('shares of panels are those of the load report, between the area share and one', () => {
    const { values } = reading('load-share');
    const sum = [...values.values()].reduce<number>((total, value) => total + value!, 0);
    const shares = [...appraisal.model.loads.shares.values()];
    expect(sum).toBeGreaterThanOrEqual(shares.reduce((total, { area }) => total + area, 0) - 1e-12);
    expect(values.size).toBe(appraisal.model.geometry.panels.length);
  });
});
