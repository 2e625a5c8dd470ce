import { expect, it } from 'vitest';
import { waterDensityOf } from '../../core/water/sea-water.ts';
import type { Situation } from '../../core/loads/situation.ts';
import { demoDocument } from '../geometry/demo-document.ts';
import { loadedPlate } from './loaded-plate.ts';
import { allCases, fourCorners, hungBy, plates, waterOnly } from './plates.ts';

const oneLine = hungBy('line', [{ id: 'L1', x: '1.65 m', y: '1.3 m' }]);
const service = (over: object) => ({ loads: { service: over } });
const near = (value: number, expected: number, tolerance = 1e-9): void =>
  expect(Math.abs(value - expected)).toBeLessThan(tolerance * Math.max(1, Math.abs(expected)));
const g = 9.80665;
const findingOf = (report: { findings: readonly { id: string; text: string; place: string }[] }, id: string) =>
  report.findings.find((f) => f.id === id);
const termOf = ({ balance }: Situation, name: string): number => balance.terms.find((t) => t.name === name)!.force;

it('halves a range, and says what the number would be as an amplitude; the same force results from half the amplitude', () => {
  const range = loadedPlate(demoDocument(waterOnly, service({ force: '60 kN', measure: 'range' })));
  const amplitude = loadedPlate(demoDocument(waterOnly, service({ force: '30 kN', measure: 'amplitude' })));
  expect(range.situation('service-down').force).toBe(amplitude.situation('service-down').force);
  expect(range.report.definition[0]).toMatch(
    /half of it, 30\.00 kN, is the amplitude.*Read as an amplitude it would be 60\.00 kN/,
  );
  expect(amplitude.report.definition[0]).toMatch(
    /30\.00 kN up and 30\.00 kN down\. Read as a range .* would be 15\.00 kN/,
  );
});

it('takes the load factor of the level from the design basis: 1.35 extreme, 1.5 characteristic, 1 under allowable stress', () => {
  const factorOf = (...over: object[]) => loadedPlate(demoDocument(waterOnly, ...over)).situation('service-up');
  expect(factorOf().force).toBeCloseTo(1.35 * 60_000, 6);
  expect(factorOf(service({ level: 'characteristic' })).force).toBeCloseTo(1.5 * 60_000, 6);
  expect(factorOf({ basis: { table: 'AISC 360 ASD' } }).force).toBe(60_000);
  expect(
    factorOf({ basis: { overrides: [{ factor: 'gamma_F_extreme', value: 1.4, reason: 'client' }] } }).force,
  ).toBeCloseTo(84_000, 6);
});

it('does not judge a mean: every situation of the service force says what is missing', () => {
  const { report } = loadedPlate(demoDocument(waterOnly, service({ level: 'mean' })));
  const ofService = report.situations.filter(({ loadCase }) =>
    ['service', 'lost bolt row', 'lost panel', 'lost leg'].includes(loadCase),
  );
  expect(ofService.length).toBe(8);
  for (const { missing } of ofService) expect(missing).toMatch(/mean cannot be judged/);
  expect(findingOf(report, 'load-mean')).toBeDefined();
});

it('finds statements that do not fit together', () => {
  const ids = (over: object) => loadedPlate(demoDocument(service(over))).report.findings.map(({ id }) => id);
  expect(ids({ includes: ['weight', 'current'] })).toContain('load-without-water');
  expect(ids({ includes: ['drag'] })).not.toContain('load-without-water');
  expect(ids({ includes: ['drag', 'current'], measure: 'range' })).toContain('range-of-steady');
  expect(ids({ returnPeriod: '1 year' })).toContain('return-period-short');
  expect(ids({ returnPeriod: '100 years' })).not.toContain('return-period-short');
});

it('doubles with the force, and turns its signs with the direction', () => {
  const doc = (force: string) =>
    demoDocument(oneLine, service({ force, includes: ['weight', 'drag'] }), hungBy('strut', fourCorners));
  const [single, double] = [loadedPlate(doc('20 kN')), loadedPlate(doc('40 kN'))];
  for (const id of ['service-down', 'service-up', 'lost-leg-up']) {
    const [a, b] = [single.situation(id), double.situation(id)];
    for (const [bay, p] of a.pressures) near(b.pressures.get(bay)!, 2 * p);
    for (const [at, V] of a.attachmentForces) near(b.attachmentForces.get(at)!, 2 * V);
    for (const [tube, { moment, torque }] of a.tubes) {
      near(b.tubes.get(tube)!.moment, 2 * moment);
      near(b.tubes.get(tube)!.torque, 2 * torque);
    }
  }
  const [up, down] = [single.situation('service-up'), single.situation('service-down')];
  expect(up.force).toBe(-down.force);
  for (const [bay, p] of up.pressures) expect(down.pressures.get(bay)).toBe(-p);
  // pressed and pulled act at other lines, so tubes twist differently, but supports are symmetric
  for (const [at, V] of up.attachmentForces) near(down.attachmentForces.get(at)!, -V);
});

it('hangs by weight and force: T = γ F + γ W down; what the least weight leaves up', () => {
  const { situation, mass } = loadedPlate(plates['a light force, so that the legs stay tight']);
  const W = mass.submergedWeight.asBuilt;
  const least = mass.least.water.weight;
  const F = 1.35 * 2000;
  expect(least).toBeGreaterThan(F);
  expect(least).toBeLessThan(W);
  const [down, up] = [situation('service-down'), situation('service-up')];
  near(termOf(down, 'Suspension'), F + 1.35 * W);
  near(termOf(up, 'Suspension'), least - F);
  near(termOf(down, 'Weight in water'), -1.35 * W);
  near(termOf(up, 'Least weight in water'), -least);
  expect(up.balance.by).toBe('suspension');
  expect(up.balance.acceleration).toBe(0);
});

it('goes slack when the force up passes the least weight in water, says by how much, and is balanced by its inertia: a = (γF − W)/(m + m_w)', () => {
  const { report, situation, mass } = loadedPlate(demoDocument(waterOnly, oneLine));
  const W = mass.least.water.weight;
  const up = situation('service-up');
  expect(up.balance.by).toBe('own inertia');
  near(up.balance.acceleration, (1.35 * 60_000 - W) / (mass.total + mass.entrainedWater));
  expect([...up.attachmentForces.values()]).toEqual([0]);
  const { text } = findingOf(report, 'line-slack')!;
  const [slackAt, amplitude, more] = [...text.matchAll(/(\d+\.\d+) kN/g)].map(([, kN]) => Number(kN));
  expect(amplitude).toBe(60);
  expect(Math.abs(slackAt! - W / 1000)).toBeLessThan(0.0051);
  expect(Math.abs(more! - (60 - W / 1000))).toBeLessThan(0.0051);
});

it('counts a line as nearly slack from 0.9 of the least weight in water (DNV-RP-N103, slack criterion, from memory), and under the load factor besides', () => {
  const W = loadedPlate(demoDocument(waterOnly, oneLine)).mass.least.water.weight;
  const found = (part: number, ...changes: object[]) =>
    loadedPlate(demoDocument(waterOnly, oneLine, service({ force: `${part * W} N` }), ...changes))
      .report.findings.filter(({ id }) => id.startsWith('line-'))
      .map(({ id }) => id);
  expect(found(0.7)).toEqual([]); // 1.35 × 0.7 < 1
  expect(found(0.8)).toEqual(['line-slack-under-factor']);
  expect(found(0.91)).toEqual(['line-nearly-slack', 'line-slack-under-factor']);
  expect(found(1.01)).toEqual(['line-slack']);
  const unfactored = { basis: { table: 'AISC 360 ASD' } };
  expect(found(0.89, unfactored)).toEqual([]);
  expect(found(0.91, unfactored)).toEqual(['line-nearly-slack']);
  const stricter = { basis: { overrides: [{ factor: 'k_slack', value: 0.6, reason: 'client' }] } };
  expect(found(0.7, stricter)).toEqual(['line-nearly-slack']);
});

it('says once for all whether the stated force holds the weight: an amplitude may, half of a range never does', () => {
  const holds = (includes: string[], measure: string) =>
    loadedPlate(demoDocument(hungBy('strut', fourCorners), service({ includes, measure }))).report.forceHoldsWeight;
  expect(holds(['weight', 'drag'], 'amplitude')).toBe(true);
  expect(holds(['weight', 'drag'], 'range')).toBe(false);
  expect(holds(['drag'], 'amplitude')).toBe(false);
});

it('relieves panels of their own inertia only where the stated number holds none', () => {
  const without = loadedPlate(demoDocument(oneLine, service({ includes: ['drag'] })));
  const within = loadedPlate(demoDocument(oneLine, service({ includes: ['drag', 'inertia'] })));
  const [a, b] = [without.situation('service-up'), within.situation('service-up')];
  const panel = without.geometry.panels[0]!;
  const perArea = (7850 * panel.thickness * panel.area) / without.report.shares.get('A1')!.solid;
  for (const [bay, p] of a.pressures) near(b.pressures.get(bay)! - p, perArea * a.balance.acceleration);
  expect(a.balance.acceleration).toBe(b.balance.acceleration);
});

it('lets a strut push: the same plate on struts has negative forces and no slack', () => {
  const { report, situation, mass } = loadedPlate(demoDocument(waterOnly, hungBy('strut', fourCorners)));
  const up = situation('service-up');
  near(termOf(up, 'Suspension'), mass.least.water.weight - 1.35 * 60_000);
  for (const V of up.attachmentForces.values()) expect(V).toBeLessThan(0);
  expect(findingOf(report, 'line-slack')).toBeUndefined();
});

it('does not add the weight when the number holds it', () => {
  const { situation, report } = loadedPlate(plates['the number holds the weight']);
  expect(situation('service-down').balance.terms.map(({ name }) => name)).toEqual(['Force of the water', 'Suspension']);
  near(termOf(situation('service-down'), 'Suspension'), 1.35 * 60_000);
  expect(report.definition.join(' ')).toMatch(/no weight is added in service/);
});

it('pulls along the legs of a bridle: each a quarter, one diagonal 1.25 times (0027/ND Rev 11, 5.6.12), H = V s/h', () => {
  const { situation } = loadedPlate(
    demoDocument(hungBy('bridle', fourCorners, '4 m'), { panels: { A3: null, B3: null, B1: null, A1: null } }),
  );
  const down = situation('service-down');
  const T = termOf(down, 'Suspension');
  for (const { id } of fourCorners) {
    const V = down.attachmentForces.get(id)!;
    near(V, (1.25 * T) / 4, 1e-6);
    const leg = down.legs.get(id)!;
    near(leg.tension, V * Math.sqrt(1 + (1.65 ** 2 + 1.3 ** 2) / 4 ** 2));
    near(Math.abs(leg.x), (V * 1.65) / 4);
    near(Math.abs(leg.y), (V * 1.3) / 4);
    expect(leg.angle).toBeCloseTo(Math.atan(Math.hypot(1.65, 1.3) / 4), 12);
  }
  // main tubes A and C are pressed along by the legs at their ends, cross tubes 1 and 4 likewise; the others are not
  for (const id of ['A', 'C']) near(down.tubes.get(id)!.axial, (((1.25 * T) / 4) * 1.65) / 4, 1e-6);
  for (const id of ['1', '4']) near(down.tubes.get(id)!.axial, (((1.25 * T) / 4) * 1.3) / 4, 1e-6);
  for (const id of ['B', '2', '3']) expect(down.tubes.get(id)!.axial).toBe(0);
});

it('carries half each on the two legs next to a lost one of four, as the middle lies on their diagonal (statics)', () => {
  const { situation } = loadedPlate(
    demoDocument(waterOnly, hungBy('bridle', fourCorners), {
      panels: { A1: 'deck', A2: 'deck', A3: 'deck', B1: 'deck', B2: 'deck', B3: 'deck' },
    }),
  );
  const lost = situation('lost-leg-down');
  expect(lost.accidental).toBe(true);
  const T = termOf(lost, 'Suspension');
  for (const V of lost.attachmentForces.values()) near(V, T / 2, 0.02); // the extras of attachments shift the middle by little
});

it('scales the panels that stay when one is lost: by 1/(1 − share lost), the force unchanged', () => {
  const plate = loadedPlate(demoDocument(hungBy('strut', fourCorners), service({ includes: ['weight', 'drag'] })));
  const { situation, report } = plate;
  const [serviceDown, lost] = [situation('service-down'), situation('lost-panel-down')];
  expect(lost.loadFactor).toBe(1);
  for (const [bay, { area, shape }] of report.shares) {
    const others = [...report.shares].filter(([other]) => other !== bay);
    const expected = Math.max(
      area / (1 - Math.max(...others.map(([, s]) => s.area))),
      shape / (1 - Math.max(...others.map(([, s]) => s.shape))),
    );
    near(lost.pressures.get(bay)! / (serviceDown.pressures.get(bay)! / 1.35), expected / Math.max(area, shape));
  }
  near(termOf(lost, 'Force of the water'), -60_000);
});

it('shares by plan area as its areas say, and by the stated shape more to the middle', () => {
  const full = {
    panels: { A1: 'deck', A2: 'deck', A3: 'deck', B1: 'deck', B2: 'deck', B3: 'deck' },
    designs: { deck: { holes: [] } },
  };
  const { report, geometry } = loadedPlate(demoDocument(waterOnly, full));
  for (const panel of geometry.panels)
    near(report.shares.get(panel.bays[0]!)!.area, panel.fields[0]!.area / geometry.areas.solid, 1e-6);
  near(
    report.tubeShare.area,
    1 - geometry.panels.reduce((sum, { fields }) => sum + fields[0]!.area, 0) / geometry.areas.solid,
    1e-6,
  );
  const share = (bay: string) => report.shares.get(bay)!;
  expect(share('A2').shape).toBeGreaterThan(share('A2').area);
  expect(share('A1').shape).toBeLessThan(share('A1').area);
  near(share('A1').shape, share('B3').shape);
  const even = loadedPlate(
    demoDocument(waterOnly, full, { loads: { pressureShape: { middleOverMean: 1, source: 'even' } } }),
  ).report;
  for (const { area, shape } of even.shares.values()) near(area, shape);
  expect(() =>
    loadedPlate(demoDocument(waterOnly, { loads: { pressureShape: { middleOverMean: 2.4, source: 'x' } } })),
  ).toThrow(/pull at the rim/);
});

it('lets the water press on the solid plan area only, the union of tubes and panels less their openings (polygon clipping of the geometry)', () => {
  const designs = (holes: object[], more: object = {}) => ({ designs: { deck: { holes, ...more } } });
  const vent = { x: '0 mm', y: '0 mm', diameter: '200 mm', purpose: 'vent' };
  const overTube = { x: '-500 mm', y: '0 mm', diameter: '60 mm', purpose: 'drain' };
  for (const change of [
    designs([]),
    designs([vent]),
    designs([vent, overTube]),
    designs([], { cornerNotch: '110 mm' }),
    { ...designs([vent]), panels: { A1: null, B1: null } },
  ]) {
    const { geometry, report, situation } = loadedPlate(demoDocument(hungBy('strut', fourCorners), change));
    const { solid } = geometry.areas;
    let whole = report.tubeShare.area;
    for (const [bay, share] of report.shares) {
      whole += share.area;
      // solid area of the bay's panel: outline less what the geometry says is open
      const { openArea } = geometry.bays.find(({ id }) => id === bay)!;
      near(share.solid, 1.07 * 1.27 - openArea, 1e-9);
      near(share.area, share.solid / solid, 2e-6);
    }
    near(whole, 1, 1e-9);
    // so the pressure by plan area is force over solid area, and force on a panel its pressure on what is solid
    const even = loadedPlate(
      demoDocument(hungBy('strut', fourCorners), change, {
        loads: { pressureShape: { middleOverMean: 1, source: 'even' } },
      }),
    ).situation('service-down');
    near(even.pressures.get('A3')!, (-1.35 * 60_000) / solid, 2e-6 * 1e4);
    const down = situation('service-down');
    near(down.panelForces.get('A3')!, down.pressures.get('A3')! * report.shares.get('A3')!.solid);
  }
});

it('gives a panel of about 3 % of the plan of a plate under 10,000 lbf about 300 lbf (common practice, no source)', () => {
  const bays = [...'ABCD'].flatMap((letter) => [1, 2, 3, 4, 5, 6, 7].map((n) => [`${letter}${n}`, 'deck'] as const));
  const { report, situation, geometry } = loadedPlate(demoDocument({
    units: 'inch',
    basis: { table: 'AISC 360 ASD' },
    grid: { mainTubes: { count: 5, spacing: '51 in' }, crossTubes: { count: 8, spacing: '43 in' }, suspension: { kind: 'strut', apex: null, attachments: [{ id: 'S', x: '150.5 in', y: '102 in' }] } },
    panels: Object.fromEntries(bays),
    loads: { service: { force: '10000 lbf', includes: ['weight', 'drag'] } },
  })); // prettier-ignore
  const lbf = 4.4482216152605;
  const panel = geometry.panels.find(({ id }) => id === 'A1')!; // near the rim, so plan area decides
  const part = panel.fields[0]!.area / geometry.areas.solid;
  expect(part).toBeGreaterThan(0.027);
  expect(part).toBeLessThan(0.033);
  const carried = situation('service-up').panelForces.get('A1')! / lbf;
  near(carried, 10_000 * part, 1e-3 * carried);
  expect(Math.abs(carried - 300)).toBeLessThan(30);
  expect(report.definition[0]).toMatch(/10,?\s?000 lbf|10\u202f000 lbf/);
});

it('slams with ρ C_s v²/2 on all of the solid area while crossing the surface', () => {
  const { situation, mass, document, geometry } = loadedPlate(demoDocument(waterOnly, allCases));
  const crossing = situation('crossing-up');
  const p = 1.5 * 0.5 * waterDensityOf(document) * 5 * 0.5 ** 2;
  near(termOf(crossing, 'Slam of the water'), p * geometry.areas.solid, 1e-6);
  near(termOf(crossing, 'Least weight in air'), -mass.least.air.weight);
  const panel = geometry.panels[0]!;
  near(
    situation('crossing-up').panelForces.get('A1')!,
    p * (panel.fields[0]!.area - (Math.PI / 4) * 0.05 ** 2) -
      7850 * g * panel.thicknessEnd * panel.area -
      crossing.balance.acceleration * 7850 * panel.thickness * panel.area,
    1e-3,
  );
});

it('lifts out the weight in air, full trays, full tubes and the drag of leaving', () => {
  const { situation, mass, document } = loadedPlate(
    demoDocument(waterOnly, allCases, { designs: { deck: { side: 'underside', holes: [] } } }),
  );
  const out = situation('lift-out-down');
  const trays = mass.trays.reduce((sum, { effect }) => sum + effect, 0);
  const onHook = (mass.total + mass.entrainedWater + trays) / 1000;
  const factor = 1.35 * (1 + 0.25 * Math.sqrt(100 / Math.max(onHook, 3))); // 0027/ND Rev 11, 5.5.1: tonnes, at least 3
  near(termOf(out, 'Weight in air with dynamic factor'), -factor * g * mass.total);
  near(termOf(out, 'Water still in the tubes, with dynamic factor'), -factor * g * mass.entrainedWater);
  near(termOf(out, 'Water held like on trays, with dynamic factor'), -factor * g * trays);
  expect(out.path).toContain(`Dynamic factor ${(factor / 1.35).toFixed(3)} on their weight (0027/ND`);
  expect(out.path.includes('items below 3 t are taken as 3 t')).toBe(onHook < 3);
  expect(mass.trays.length).toBeGreaterThan(0);
  const area = -termOf(out, 'Drag of leaving the water') / (1.5 * 0.5 * waterDensityOf(document) * 2.5 * 0.3 ** 2);
  expect(area).toBeGreaterThan(5);
  expect(out.balance.by).toBe('slings');
});

it('takes the stated dynamic factor of lifting out, on weight and not on drag', () => {
  const withFactor = (value: number) => {
    const liftOut = { dynamicFactor: { value, source: 'invented' } };
    return loadedPlate(demoDocument(waterOnly, allCases, { loads: { liftOut } })).situation('lift-out-down');
  };
  const [one, two] = [withFactor(1), withFactor(2)];
  const drag = 'Drag of leaving the water';
  near(termOf(two, drag), termOf(one, drag));
  near(two.force - termOf(two, drag), 2 * (one.force - termOf(one, drag)));
  near(one.force - two.force, 1.35 * g * (loadedPlate(demoDocument(waterOnly, allCases)).mass.total + waterIn(one)));
  expect(two.path).toContain('Dynamic factor 2.000 on their weight (invented)');
});

it('lifts out the growth of the stated years as well: its weight in air, as thick over tubes and panels as the mass report has it', () => {
  const growth = { years: 2, density: '1100 kg/m^3', source: 'invented' };
  const { situation, mass } = loadedPlate(demoDocument(waterOnly, allCases, { hydrodynamics: { growth } }));
  const out = situation('lift-out-down');
  const byMass = (termOf(out, 'Weight in air with dynamic factor') * mass.growth!.mass) / mass.total;
  // the mass report grows panels under their laps on tubes as well, pressures act on the bays alone
  near(termOf(out, 'Marine growth, with dynamic factor'), byMass, 0.02);
  expect(out.path).toContain('the growth of the stated years is on the plate');
  // growth as heavy as the water still weighs in air
  const light = loadedPlate(demoDocument(waterOnly, allCases, { hydrodynamics: { growth: { ...growth, density: '1025 kg/m^3' } } })); // prettier-ignore
  expect(termOf(light.situation('lift-out-down'), 'Marine growth, with dynamic factor')).toBeLessThan(0);
  expect(loadedPlate(demoDocument(waterOnly, allCases)).situation('lift-out-down').path).not.toContain('growth');
});

const waterIn = (out: Situation): number =>
  -out.balance.terms.reduce((sum, { name, force }) => (name.startsWith('Water') ? sum + force : sum), 0) / (1.35 * g);

it('names the skew load factor where four slings share, and only there', () => {
  const four = loadedPlate(plates['pad eyes for lifting']);
  expect(four.situation('lift-in-air-down').path).toMatch(/skew load factor of 1\.25 on each diagonal in turn \(0027/);
  expect(four.situation('lift-in-air-down').path).toMatch(/items below 3 t are taken as 3 t/);
  expect(four.situation('service-down').path).not.toMatch(/skew/);
});

it('lifts in air with the offshore factor of 0027/ND, or the stated one, at pad eyes if there are any', () => {
  const { situation, mass } = loadedPlate(plates['pad eyes for lifting']);
  const lift = situation('lift-in-air-down');
  expect(mass.total).toBeLessThan(3000);
  near(termOf(lift, 'Slings'), 1.35 * 2.443 * g * mass.total, 1e-3 * g * mass.total);
  expect([...lift.attachmentForces.keys()]).toEqual(fourCorners.map(({ id }) => id));
  expect([...situation('service-down').attachmentForces.keys()]).toEqual(['L1']);
  const stated = loadedPlate(
    demoDocument(waterOnly, { loads: { liftInAir: { dynamicFactor: { value: 1.3, source: 'invented' } } } }),
  );
  near(termOf(stated.situation('lift-in-air-down'), 'Slings'), 1.35 * 1.3 * g * stated.mass.total);
  expect(stated.situation('lift-in-air-down').path).toMatch(/1\.300 \(invented\)/);
});

it('shares a lift at three points by statics about the centre of mass', () => {
  const points = fourCorners.slice(0, 3);
  const { situation, mass } = loadedPlate(demoDocument(waterOnly, hungBy('strut', points)));
  const lift = situation('lift-in-air-down');
  const W = termOf(lift, 'Slings');
  const [x, y] = [mass.centre[0], mass.centre[1]];
  // corners (0, 0), (a, 0), (a, b): barycentric parts 1 − x/a, x/a − y/b, y/b
  near(lift.attachmentForces.get('S1')!, W * (1 - x / 3.3), 1e-6);
  near(lift.attachmentForces.get('S2')!, W * (x / 3.3 - y / 2.6), 1e-6);
  near(lift.attachmentForces.get('S3')!, W * (y / 2.6), 1e-6);
});

it('stands on deck with its weight, the supports only pushing up', () => {
  const { situation, mass } = loadedPlate(demoDocument(waterOnly, allCases));
  const deck = situation('deck-down');
  near(termOf(deck, 'Supports on deck'), 1.35 * 1.2 * g * mass.total);
  near(
    [...deck.attachmentForces.values()].reduce((sum, V) => sum + V, 0),
    1.35 * 1.2 * g * mass.total,
  );
  for (const V of deck.attachmentForces.values()) expect(V).toBeGreaterThanOrEqual(0);
});

it('says what is missing where the document gives no data for a case', () => {
  const { report, situation } = loadedPlate(demoDocument(waterOnly));
  for (const id of ['crossing-up', 'lift-out-down', 'deck-down']) expect(situation(id).missing).toBeTruthy();
  expect(report.findings.filter(({ id }) => id === 'case-missing').length).toBe(3);
  expect(situation('lift-in-air-down').missing).toBeUndefined();
});

it('finds a single load path, a plate that tilts when a leg goes, and a force beside the line', () => {
  const single = loadedPlate(demoDocument(waterOnly, oneLine)).report;
  expect(findingOf(single, 'single-load-path')!.text).toMatch(/loss of the line is loss of the plate/);
  expect(single.situations.some(({ loadCase }) => loadCase === 'lost leg')).toBe(false);
  expect(findingOf(loadedPlate(demoDocument(waterOnly)).report, 'leg-lost-tilts')).toBeDefined();
  expect(findingOf(loadedPlate(plates['one line beside the middle']).report, 'off-centre')!.place).toBe('service-down');
  expect(findingOf(single, 'off-centre')).toBeUndefined();
});

it('refuses an attachment beside the tubes and names the nearest, and two in one place', () => {
  const beside = demoDocument(hungBy('line', [{ id: 'L1', x: '1.65 m', y: '0.9 m' }]));
  expect(() => loadedPlate(beside)).toThrow(
    /Attachment L1 .* stands on no tube; the nearest is main tube B, 325(\.0)? mm away/,
  );
  const twice = demoDocument(hungBy('strut', [{ id: 'L1', x: '0 m', y: '0 m' }, { id: 'L2', x: '0 m', y: '0 m' }])); // prettier-ignore
  expect(() => loadedPlate(twice)).toThrow(/in the same place/);
});

it('says on which path panels hand the force on', () => {
  const { situation } = loadedPlate(demoDocument(waterOnly));
  expect(situation('service-up').path).toMatch(
    /Force of the water up on the plate: topside panels are pulled off their tubes and hang on their bolts\./,
  );
  expect(situation('service-down').path).toMatch(/topside panels are pressed onto their tubes/);
});

it('loads the wall of a tube with the peak of the panel edge: p s/2 for the short side s of a field held on four sides', () => {
  const { situation, geometry } = loadedPlate(demoDocument(waterOnly, { designs: { deck: { holes: [] } } }));
  const down = situation('service-down');
  const { outline } = geometry.panels.find(({ id }) => id === 'A1')!;
  const short = Math.min(outline.x1 - outline.x0, outline.y1 - outline.y0);
  const p = Math.max(...[...down.pressures.values()].map(Math.abs));
  near(down.tubes.get('A')!.wallLine, (p * short) / 2, 1e-6);
});
