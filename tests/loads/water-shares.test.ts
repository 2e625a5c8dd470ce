import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDocument, type RawDocument } from '../../core/document/read-document.ts';
import { forceOf } from '../../core/loads/loaded.ts';
import { resultant } from '../../core/loads/tube-lines.ts';
import { loadSection } from '../../core/note/load-section.ts';
import { modelOfOption } from '../../core/options/model-of-option.ts';
import { printIn } from '../../core/print-in.ts';

const middle = JSON.parse(readFileSync('samples/middle.stillplate.json', 'utf8')) as RawDocument & {
  loads: Record<string, unknown>;
  hydrodynamics: Record<string, unknown>;
};
const modelWith = (panelShares: string | undefined, more: object = {}, option: string | null = null) => {
  const raw = {
    ...middle,
    loads: { ...middle.loads, ...(panelShares ? { panelShares } : {}) },
    ...more,
  } as RawDocument;
  return modelOfOption(raw, readDocument(raw), option);
};
const flow = modelWith('area, shape and flow');
const plain = modelWith(undefined);
const share = (bay: string) => flow.loads.shares.get(bay)!;
const pressure = (model: typeof flow, bay: string) =>
  Math.abs(model.loads.situations.find(({ id }) => id === 'service-down')!.pressures.get(bay)!);

describe('each panel’s share by the flow', () => {
  it('stands beside area and shape where the document chooses it, and nowhere else', () => {
    expect([...plain.loads.shares.values()].every(({ flow: none }) => none === null)).toBe(true);
    expect(JSON.stringify(loadSection(plain, printIn('metric')))).not.toContain('Worst phase');
    expect(JSON.stringify(loadSection(flow, printIn('metric')))).toContain('Worst phase');
  });

  it('gives middle panels more of the inertia than their area, and end panels less (elliptic pressure: 4/π of the mean in the middle)', () => {
    expect(share('A3').flow!.inertia).toBeGreaterThan(1.1 * share('A3').area);
    expect(share('A1').flow!.inertia).toBeLessThan(share('A1').area);
  });

  it('is the same for bays that mirror each other, within a tenth of a percent of the plate', () => {
    for (const [a, b] of [['A1', 'A6'], ['A3', 'A4'], ['A2', 'A5']] as const)
      expect(Math.abs(share(a).flow!.peak - share(b).flow!.peak)).toBeLessThan(1e-3);
  }); // prettier-ignore

  it('lies between the smaller and the larger of inertia and drag, for no phase can be worse than both', () => {
    for (const { flow: own } of flow.loads.shares.values()) {
      expect(own!.peak).toBeLessThanOrEqual(Math.max(own!.inertia, own!.drag) + 1e-12);
      expect(own!.peak).toBeGreaterThanOrEqual(Math.min(own!.inertia, own!.drag) - 1e-12);
    }
  });

  it('never lowers the pressure that a panel is judged with, and raises it where the flow governs', () => {
    let raised = 0;
    for (const [bay, { area, shape, flow: own }] of flow.loads.shares) {
      const times = pressure(flow, bay) / pressure(plain, bay);
      expect(times).toBeGreaterThan(1 - 1e-9);
      if (own!.peak > Math.max(area, shape) * 1.001) {
        raised++;
        expect(times).toBeGreaterThan(1.0005);
      }
    }
    expect(raised).toBeGreaterThan(0);
  });

  it('takes the larger of inertia and drag where no motion is stated', () => {
    const still = modelWith('area, shape and flow', { hydrodynamics: {} });
    for (const { flow: own } of still.loads.shares.values()) expect(own!.peak).toBe(Math.max(own!.inertia, own!.drag));
  });
});

describe('tubes and grid by the flow', () => {
  const { plate, situations } = flow.loads;
  const service = situations.find(({ id }) => id === 'service-down')!;
  const phases = service.loadings.filter(({ name }) => name.startsWith('by the flow'));

  it('share the whole force with the panels, for inertia and for drag, and lie in balance about the middle', () => {
    expect(plate.flowOnTubes).toHaveLength(2); // clean, and with growth
    for (const k of [0, 1]) {
      for (const of of ['inertia', 'edges'] as const) {
        const fields = plate.fields.reduce((sum, { flow: own }) => sum + own[k]![of], 0);
        const strips = plate.shares.strips.reduce((sum, { flow: own }) => sum + own[k]![of], 0);
        expect(fields + strips).toBeCloseTo(1, 12);
        expect(strips).toBeGreaterThan(0);
        expect(forceOf(plate.frame, plate.flowOnTubes[k]![of])).toBeCloseTo(strips, 12);
      }
      // drag is shed at edges: the tubes at the rim carry more of it than of inertia, which is least at the rim
      const rim = plate.shares.strips.reduce((sum, { flow: own }) => sum + own[k]!.edges - own[k]!.inertia, 0);
      expect(rim).toBeGreaterThan(0);
    }
  });

  it('are solved at phases that never load the plate with more than the force, and once with all of it', () => {
    const whole = ({ pressures, onTubes }: (typeof phases)[number]) =>
      plate.fields.reduce((sum, { area }, i) => sum + pressures[i]! * area, 0) + resultant(plate.lines, onTubes)[0];
    // the first loading is the force by area with the weight, as every other has it
    const weight = whole(service.loadings[0]!) - service.force;
    const water = phases.map((phase) => (whole(phase) - weight) / service.force);
    expect(phases.length).toBeGreaterThanOrEqual(3);
    for (const part of water) expect(part).toBeLessThanOrEqual(1 + 1e-9);
    expect(Math.max(...water)).toBeCloseTo(1, 9);
  });

  it('carry no less than by area and shape alone, and somewhere more', () => {
    const before = plain.loads.situations.find(({ id }) => id === 'service-down')!;
    let more = 0;
    for (const [id, own] of service.tubes) {
      const moment = own.moment;
      const known = before.tubes.get(id)!.moment;
      expect(moment).toBeGreaterThanOrEqual(known * (1 - 1e-9));
      if (moment > known * 1.001) more++;
    }
    expect(more).toBeGreaterThan(0);
  });

  it('are solved about the plate grown over as well where growth is stated, and about the clean plate alone where none is', () => {
    const grown = phases.filter(({ name }) => name.endsWith('grown over'));
    expect(grown.length).toBeGreaterThanOrEqual(3);
    expect(grown.length).toBeLessThan(phases.length);
    const { growth: _none, ...hydrodynamics } = middle.hydrodynamics;
    const clean = modelWith('area, shape and flow', { hydrodynamics });
    const named = clean.loads.situations.find(({ id }) => id === 'service-down')!.loadings.map(({ name }) => name);
    expect(named.some((name) => name.endsWith('grown over'))).toBe(false);
    // a panel is judged with the worse of both
    for (const [bay, { flow: own }] of clean.loads.shares)
      expect(share(bay).flow!.peak).toBeGreaterThanOrEqual(own!.peak);
  });

  it('with a panel lost hold all of the force as inertia and all as drag, on what is left (equilibrium)', () => {
    const lost = situations.find(({ id }) => id === 'lost-panel-down')!;
    const whole = ({ pressures, onTubes }: (typeof phases)[number]) =>
      plate.fields.reduce((sum, { area }, i) => sum + pressures[i]! * area, 0) + resultant(plate.lines, onTubes)[0];
    for (const { id } of flow.geometry.panels) {
      const own = lost.loadings.filter((one) => one.lost === id);
      const byFlow = own.filter(({ name }) => name.startsWith('by the flow'));
      expect(byFlow.map(({ name }) => name)).toHaveLength(4);
      for (const one of byFlow) {
        // the same sum as by area, whose water is the whole force by its own equilibrium
        expect(whole(one) / whole(own[0]!)).toBeCloseTo(1, 9);
        plate.fields.forEach(({ panel }, i) => panel.id === id && expect(one.pressures[i]).toBe(0));
      }
    }
  });

  it('with a panel lost press each other panel with no less than the flow of the whole plate does', () => {
    const lost = situations.find(({ id }) => id === 'lost-panel-down')!;
    const before = plain.loads.situations.find(({ id }) => id === 'lost-panel-down')!;
    let more = 0;
    for (const [bay, p] of lost.pressures) {
      const { flow: own } = share(bay);
      const field = plate.fields.find((one) => one.bay === bay)!;
      const water = (own!.peak * Math.abs(lost.force)) / field.area;
      expect(Math.abs(p)).toBeGreaterThan(water * (1 - 2e-3)); // the lattice's parts beside those of areas
      if (Math.abs(p) > Math.abs(before.pressures.get(bay)!) * 1.001) more++;
    }
    expect(more).toBeGreaterThan(0);
    for (const [id, { moment }] of lost.tubes)
      expect(moment).toBeGreaterThanOrEqual(before.tubes.get(id)!.moment * (1 - 1e-9));
  });
});
