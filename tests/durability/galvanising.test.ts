import { expect, it } from 'vitest';
import { anodeBurden } from '../../core/durability/anode-burden.ts';
import { galvanisingFindings } from '../../core/durability/galvanising-findings.ts';
import { galvanisingHole } from '../../core/durability/galvanising-vents.ts';
import { inspectionPlan } from '../../core/checks/inspection-plan.ts';
import { fatigueReport } from '../../core/checks/fatigue-report.ts';
import { inspectionFigure } from '../../core/note/inspection-figure.ts';
import { demoModel } from '../checks/model-of.ts';
import { welded } from '../checks/welded.ts';

const found = (...changes: unknown[]) => galvanisingFindings(demoModel(...changes)).map(({ id }) => id);
const galvanised = { protection: { galvanised: true } };

it('asks 10 mm at 20, 25 mm at 100, 30 mm at 120 and 50 mm at 200 mm; nothing known above (EN ISO 14713-2, from memory)', () => {
  expect([0.02, 0.1, 0.12, 0.2].map(galvanisingHole)).toEqual([0.01, 0.025, 0.03, 0.05]);
  expect(galvanisingHole(0.0201)).toBe(0.012);
  expect(galvanisingHole(0.201)).toBeNull();
});

it('says nothing of a plate that is not galvanised', () => expect(found()).toEqual([]));

it('says that a sealed tube bursts in the bath', () => {
  expect(found(galvanised, { grid: { mainTubes: { flooding: 'sealed' } } })).toContain('galvanised-sealed');
  expect(found(galvanised)).not.toContain('galvanised-sealed');
});

it('wants the smaller of vent and drain to be large enough', () => {
  const holes = (size: string) => ({
    grid: { mainTubes: { vent: size, drain: size }, crossTubes: { vent: size, drain: size } },
  });
  expect(found(galvanised, holes('8 mm'))).toContain('galvanising-holes');
  expect(found(galvanised, holes('60 mm'))).not.toContain('galvanising-holes');
  expect(found(galvanised, holes('60 mm'), { grid: { crossTubes: { drain: '8 mm' } } })).toContain('galvanising-holes');
});

it('names welded laps, not bolted ones', () => {
  expect(found(galvanised, welded())).toContain('galvanised-lap');
  expect(found(galvanised)).not.toContain('galvanised-lap');
});

const anodes = { alloy: 'aluminium', form: 'flush', count: 4, mass: '13.5 kg', length: '500 mm', width: '100 mm', places: [{ x: '0 mm', y: '0 mm' }, { x: '1 m', y: '0 mm' }, { x: '0 mm', y: '1 m' }, { x: '1 m', y: '1 m' }], source: 'test' }; // prettier-ignore
const durability = { coating: 'III', bores: 'stagnant', panels: 'bonded', fasteners: 'bonded', anodes };

it('weighs anodes by Archimedes and drags them as square bars: 4 × 5 l, 334.4 N in 1026 kg/m³; 2 × 4 × 0.05 m² (worked by hand)', () => {
  const { document } = demoModel({ durability, water: { density: '1026 kg/m^3' }, hydrodynamics: { motion: { amplitude: '1 m', period: '6.283185307 s', source: 'test' } } }); // prettier-ignore
  const burden = anodeBurden(document)!;
  expect(burden.mass).toBe(54);
  expect(burden.weightInWater).toBeCloseTo((54 - 0.02 * 1026) * 9.80665, 1);
  expect(burden.dragArea).toBeCloseTo(0.4, 12);
  expect(burden.drag).toBeCloseTo(0.5 * 1026 * 0.4, 5);
});

it('marks anodes and each place that a row of the plan names', () => {
  const model = demoModel({ durability });
  const plan = inspectionPlan(model, fatigueReport(model, []));
  const figure = inspectionFigure(model, plan)!;
  const labels = figure.shapes.filter((shape) => shape.kind === 'label').map(({ text }) => text);
  const row = plan.findIndex(({ id }) => id === 'anodes') + 1;
  expect(labels.filter((text) => text.split(', ').includes(String(row)))).toHaveLength(4);
  const eyes = plan.findIndex(({ id }) => id === 'eyes') + 1;
  expect(labels.filter((text) => text.split(', ').includes(String(eyes)))).toHaveLength(model.document.grid.suspension.attachments.length); // prettier-ignore
});
