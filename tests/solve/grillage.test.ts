import { describe, expect, it } from 'vitest';
import { grillage } from '../../core/solve/grillage.ts';
import type { GrillageAnswer, GrillageLoads, GrillageModel } from '../../core/solve/grillage-model.ts';

const [EI, GJ, GA] = [210e9 * 279.43e-8, 80.769231e9 * 439.41e-8, (80.769231e9 * 18.732e-4) / 2];
const rigid = Infinity;

/** Seven by three nodes 0.5 m apart, three long and seven short tubes: node (i, j) is number 3 i + j. */
function reference(supports: GrillageModel['supports'], shear: boolean, divide = 1): GrillageModel {
  const nodes = Array.from({ length: 21 }, (_, n) => ({ x: 0.5 * Math.floor(n / 3), y: 0.5 * (n % 3) }));
  const members: GrillageModel['members'][number][] = [];
  const join = (from: number, to: number): void => {
    let last = from;
    for (let k = 1; k <= divide; k++) {
      const [start, end] = [nodes[from]!, nodes[to]!];
      const next = k === divide ? to : nodes.length;
      if (k < divide)
        nodes.push({ x: start.x + ((end.x - start.x) * k) / divide, y: start.y + ((end.y - start.y) * k) / divide });
      members.push({ from: last, to: next, EI, GJ, ...(shear ? { GA } : {}), mass: 14.704 });
      last = next;
    }
  };
  for (let i = 0; i < 7; i++)
    for (let j = 0; j < 3; j++) {
      if (i < 6) join(3 * i + j, 3 * i + j + 3);
      if (j < 2) join(3 * i + j, 3 * i + j + 1);
    }
  return { nodes, members, supports };
}

/** 1000 Pa by tributary area, downward. */
const pressure: GrillageLoads = {
  nodes: Array.from({ length: 21 }, (_, node) => ({
    node,
    w: -250 * (node < 3 || node > 17 ? 0.5 : 1) * (node % 3 === 1 ? 1 : 0.5),
  })),
};
const centre = [{ node: 10, w: rigid, rx: rigid, ry: rigid }];
const four = [3, 5, 15, 17].map((node) => ({ node, w: rigid }));

describe('a grid of 2 × 6 bays (independent exact stiffness solution, derived)', () => {
  const rows = [
    [
      'held at its centre, Euler beams',
      centre,
      false,
      [-0.392291, -0.393131, -0.227246, -0.226178, -0.08873, -0.077173, -0.029683, 0],
    ],
    [
      'held at its centre, shear-flexible beams',
      centre,
      true,
      [-0.399948, -0.400953, -0.234394, -0.233364, -0.094444, -0.082271, -0.033815, 0],
    ],
    [
      'on four points, Euler beams',
      four,
      false,
      [0.045671, 0.039451, 0, -0.011219, -0.054723, -0.061537, -0.07908, -0.083828],
    ],
    [
      'on four points, shear-flexible beams',
      four,
      true,
      [0.044814, 0.038159, 0, -0.012572, -0.05666, -0.063973, -0.081607, -0.086738],
    ],
  ] as const;
  for (const [title, supports, shear, expected] of rows)
    it(`deflects as tabled to the printed digits: ${title}`, () => {
      const { w, reactions, residual } = grillage(reference(supports, shear)).solve(pressure);
      expected.forEach((value, k) => expect(Math.abs(w[3 * (k >> 1) + (k & 1)]! * 1e3 - value)).toBeLessThan(6e-7));
      // Mirror images: node (i, j) against (6 - i, j) and (i, 2 - j).
      for (let n = 0; n < 21; n++) {
        const [i, j] = [Math.floor(n / 3), n % 3];
        expect(w[3 * (6 - i) + j]).toBeCloseTo(w[n]!, 14);
        expect(w[3 * i + 2 - j]).toBeCloseTo(w[n]!, 14);
      }
      const total = reactions.reduce((sum, r) => sum + r.w, 0);
      expect(Math.abs(total / 3000 - 1)).toBeLessThan(1e-12);
      for (const r of reactions) expect(r.w).toBeCloseTo(3000 / reactions.length, 7);
      expect(residual).toBeLessThan(1e-12);
    });

  it('does not change when each member is cut in three, since the beams are exact', () => {
    for (const shear of [false, true]) {
      const whole = grillage(reference(four, shear)).solve(pressure);
      const cut = grillage(reference(four, shear, 3)).solve(pressure);
      whole.w.forEach((value, n) => expect(Math.abs(cut.w[n]! - value)).toBeLessThan(1e-14));
    }
  });
});

describe('beams against closed forms (beam tables, common practice)', () => {
  const line = (
    count: number,
    span: number,
    supports: GrillageModel['supports'],
    shear = Infinity,
    turn = 0,
  ): GrillageModel => ({
    nodes: Array.from({ length: count + 1 }, (_, i) => ({
      x: span * i * Math.cos(turn),
      y: span * i * Math.sin(turn),
    })),
    members: Array.from({ length: count }, (_, i) => ({ from: i, to: i + 1, EI, GJ, GA: shear })),
    supports,
  });
  const uniform = (count: number, force: number | [number, number]): GrillageLoads => ({
    members: Array.from({ length: count }, (_, member) => ({ member, force })),
  });
  const close = (value: number, expected: number, scale = expected): void =>
    expect(Math.abs(value - expected) / Math.abs(scale)).toBeLessThan(1e-10);

  it('built in at both ends: q L²/12 at the ends, q L²/24 at the middle, with shear flexibility too', () => {
    for (const shear of [Infinity, GA]) {
      const clamp = { w: rigid, rx: rigid, ry: rigid };
      const { members, reactions } = grillage(
        line(
          1,
          4,
          [
            { node: 0, ...clamp },
            { node: 1, ...clamp },
          ],
          shear,
        ),
      ).solve(uniform(1, -3000));
      close(members[0]!.momentLeast, (-3000 * 16) / 12);
      close(members[0]!.momentMost, (3000 * 16) / 24);
      close(members[0]!.momentMostAt, 2);
      close(members[0]!.shearLargest, 6000);
      close(reactions[0]!.my, -(3000 * 16) / 12);
      close(reactions[1]!.my, (3000 * 16) / 12);
    }
  });

  it('built in at both ends under a load that rises from 0 to q: q L²/30 and q L²/20 at the ends', () => {
    const clamp = { w: rigid, rx: rigid, ry: rigid };
    const { members } = grillage(
      line(1, 4, [
        { node: 0, ...clamp },
        { node: 1, ...clamp },
      ]),
    ).solve(uniform(1, [0, -3000]));
    close(members[0]!.start.moment, (-3000 * 16) / 30);
    close(members[0]!.end.moment, (-3000 * 16) / 20);
    close(members[0]!.start.shear, (3 * 3000 * 4) / 20);
    close(members[0]!.end.shear, (-7 * 3000 * 4) / 20);
  });

  it('on two supports: 5 q L⁴/384 EI + q L²/8 GA at the middle, whichever way the beam points', () => {
    for (const turn of [0, 0.5, Math.PI / 2, 2.5]) {
      // Springs at the middle keep the beam from rolling; by symmetry it does not turn there, so they carry nothing.
      const supports = [
        { node: 0, w: rigid },
        { node: 1, rx: 1e3, ry: 1e3 },
        { node: 2, w: rigid },
      ];
      const { w, members } = grillage(line(2, 2, supports, GA, turn)).solve(uniform(2, -3000));
      close(-w[1]!, (5 * 3000 * 4 ** 4) / (384 * EI) + (3000 * 4 ** 2) / (8 * GA));
      close(members[0]!.end.moment, (3000 * 16) / 8);
    }
  });

  it('three equal spans: q L²/10 over the supports, 0.08 and 0.025 q L² in the spans, reactions 0.4 and 1.1 q L', () => {
    const supports = [0, 1, 2, 3].map((node) => ({ node, w: rigid, ...(node === 0 ? { rx: rigid } : {}) }));
    const { members, reactions } = grillage(line(3, 2, supports)).solve(uniform(3, -1000));
    close(members[0]!.momentLeast, -400);
    close(members[0]!.momentMost, 0.08 * 4000);
    close(members[0]!.momentMostAt, 0.4 * 2);
    close(members[1]!.momentMost, 0.025 * 4000);
    reactions.forEach((r, i) => close(r.w, i === 0 || i === 3 ? 800 : 2200));
  });

  it('a spring gives by F / k and takes its share', () => {
    const supports = [
      { node: 0, w: rigid, rx: rigid },
      { node: 1, w: 5e4 },
    ];
    const { w, reactions } = grillage(line(1, 2, supports)).solve({ nodes: [{ node: 1, w: -1000 }] });
    close(w[1]!, -1000 / 5e4);
    close(reactions[1]!.w, 1000);
    close(reactions[0]!.w, 0, 1000);
  });

  it('a line torque twists a held shaft by m L²/2 GJ, all of it at the held end', () => {
    const { rx, members, reactions } = grillage(line(1, 2, [{ node: 0, w: rigid, rx: rigid, ry: rigid }])).solve({
      members: [{ member: 0, torque: 500 }],
    });
    close(rx[1]!, (500 * 4) / (2 * GJ));
    close(members[0]!.start.torque, 1000);
    close(members[0]!.torqueLargest, 1000);
    close(reactions[0]!.mx, -1000);
  });

  it('a bent cantilever sinks by P (2/3EI + 1/GJ): −3.9537306 mm (derived)', () => {
    const { w, members } = grillage({
      nodes: [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
        { x: 1, y: 1 },
      ],
      members: [
        { from: 0, to: 1, EI, GJ },
        { from: 1, to: 2, EI, GJ },
      ],
      supports: [{ node: 0, w: rigid, rx: rigid, ry: rigid }],
    }).solve({ nodes: [{ node: 2, w: -1000 }] });
    expect(Math.abs(w[2]! * 1e3 + 3.9537306)).toBeLessThan(5e-8);
    close(w[2]!, -1000 * (2 / (3 * EI) + 1 / GJ));
    close(members[0]!.torqueLargest, 1000);
    close(members[0]!.momentLargest, 1000);
  });
});

describe('equilibrium and reciprocity', () => {
  const model: GrillageModel = {
    nodes: [
      { x: 0, y: 0 },
      { x: 2, y: 0.3 },
      { x: 2.4, y: 1.9 },
      { x: -0.2, y: 1.5 },
      { x: 1, y: 0.9 },
    ],
    members: [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 0],
      [0, 4],
      [4, 2],
      [1, 4],
      [4, 3],
    ].map(([from, to]) => ({ from: from!, to: to!, EI, GJ, GA })),
    supports: [
      { node: 0, w: rigid },
      { node: 1, w: 2e6, ry: 1e4 },
      { node: 2, w: rigid },
      { node: 3, w: 3e5 },
    ],
  };
  const loads: GrillageLoads = {
    nodes: [{ node: 4, w: -900, mx: 40, my: -70 }],
    members: [
      { member: 0, force: [-300, -900], torque: 35 },
      { member: 5, force: -450 },
      { member: 6, torque: -80 },
    ],
  };

  it('reactions balance node, line and torque loads in force and in both moments', () => {
    const { reactions } = grillage(model).solve(loads);
    const sum = [-900, 40 - 900 * 0.9, -70 + 900 * 1];
    const add = (x: number, y: number, w: number, mx: number, my: number): void => {
      sum[0]! += w;
      sum[1]! += mx + w * y;
      sum[2]! += my - w * x;
    };
    reactions.forEach((r) => add(model.nodes[r.node]!.x, model.nodes[r.node]!.y, r.w, r.mx, r.my));
    const along = (member: number, s: number): [number, number] => {
      const { from, to } = model.members[member]!;
      const [p, q] = [model.nodes[from]!, model.nodes[to]!];
      return [p.x + s * (q.x - p.x), p.y + s * (q.y - p.y)];
    };
    const length = (member: number): number => {
      const [[x0, y0], [x1, y1]] = [along(member, 0), along(member, 1)];
      return Math.hypot(x1 - x0, y1 - y0);
    };
    // A load that rises from p to p' is p at the middle and (p' - p)/2 at two thirds.
    add(...along(0, 0.5), -300 * length(0), 0, 0);
    add(...along(0, 2 / 3), -300 * length(0), 0, 0);
    add(...along(5, 0.5), -450 * length(5), 0, 0);
    for (const [member, torque] of [
      [0, 35],
      [6, -80],
    ] as const) {
      const [[x0, y0], [x1, y1]] = [along(member, 0), along(member, 1)];
      add(0, 0, 0, torque * (x1 - x0), torque * (y1 - y0));
    }
    for (const value of sum) expect(Math.abs(value)).toBeLessThan(1e-12 * 3000);
  });

  it('keeps each member in balance: end actions follow from the start by statics', () => {
    const { members, residual } = grillage(model).solve(loads);
    expect(residual).toBeLessThan(1e-12);
    members.forEach(({ start, end }, e) => {
      const { from, to } = model.members[e]!;
      const L = Math.hypot(model.nodes[to]!.x - model.nodes[from]!.x, model.nodes[to]!.y - model.nodes[from]!.y);
      const plain = e !== 0 && e !== 5;
      if (plain) expect(Math.abs(end.moment - start.moment - start.shear * L)).toBeLessThan(1e-9);
    });
  });

  it('obeys Maxwell and Betti: the work of one load on the other’s deflections is mutual', () => {
    const solved = grillage(model);
    const other: GrillageLoads = {
      nodes: [
        { node: 1, w: 500, mx: -20 },
        { node: 3, w: 250, my: 60 },
      ],
    };
    const one: GrillageLoads = { nodes: [{ node: 4, w: -900, mx: 40, my: -70 }] };
    const work = (by: GrillageLoads, on: GrillageAnswer): number =>
      by.nodes!.reduce(
        (sum, f) => sum + (f.w ?? 0) * on.w[f.node]! + (f.mx ?? 0) * on.rx[f.node]! + (f.my ?? 0) * on.ry[f.node]!,
        0,
      );
    const [first, second] = [work(other, solved.solve(one)), work(one, solved.solve(other))];
    expect(Math.abs(first / second - 1)).toBeLessThan(1e-11);
  });

  it('adds load cases, from one factor', () => {
    const solved = grillage(model);
    const [a, b] = [solved.solve(loads), solved.solve({ nodes: [{ node: 4, w: 900 }] })];
    const both = solved.solve({ ...loads, nodes: [{ node: 4, mx: 40, my: -70 }] });
    both.w.forEach((value, n) => expect(Math.abs(value - a.w[n]! - b.w[n]!)).toBeLessThan(1e-15));
  });
});

it.each([
  [
    'on rigid supports',
    {
      ...reference(
        [
          { node: 0, w: rigid, rx: rigid },
          { node: 20, w: rigid },
          { node: 2, w: 5e4 },
        ],
        true,
      ),
    },
  ],
  ['free, with a mass on a node', { ...reference([], true), freeBody: true }],
  ['hung at one point', { ...reference([{ node: 1, w: rigid }], true), freeBody: true }],
] as const)('displacements alone are those of the whole answer: %s', (_, plain) => {
  const model: GrillageModel = {
    ...plain,
    nodes: plain.nodes.map((node, i) => (i === 5 ? { ...node, mass: 40 } : node)),
  };
  const solved = grillage(model);
  const forces = new Float64Array(3 * model.nodes.length);
  [700, -300, 45, -20].forEach((force, i) => (forces[7 * i + 2] = force));
  const nodes = model.nodes.map((_, node) => ({ node, w: forces[3 * node]!, mx: forces[3 * node + 1]!, my: forces[3 * node + 2]! })); // prettier-ignore
  const { w, rx, ry } = solved.solve({ nodes });
  const u = solved.displacements(forces);
  const size = Math.max(...w.map(Math.abs));
  expect(size).toBeGreaterThan(0);
  w.forEach((rise, node) => {
    expect(Math.abs(u[3 * node]! - rise)).toBeLessThan(1e-11 * size);
    expect(Math.abs(u[3 * node + 1]! - rx[node]!)).toBeLessThan(1e-11 * size);
    expect(Math.abs(u[3 * node + 2]! - ry[node]!)).toBeLessThan(1e-11 * size);
  });
});

describe('a grid that its own inertia balances', () => {
  const bar = (count: number): GrillageModel => ({
    nodes: Array.from({ length: count + 1 }, (_, i) => ({ x: (4 * i) / count, y: 0 })),
    members: Array.from({ length: count }, (_, i) => ({ from: i, to: i + 1, EI, GJ, mass: 15 })),
    supports: [{ node: 0, rx: rigid }],
    freeBody: true,
  });

  it('a free bar pushed at its middle: F/m, moment F L/8, as a beam under its own inertia (statics)', () => {
    const { acceleration, members, w, residual } = grillage(bar(2)).solve({ nodes: [{ node: 1, w: 1000 }] });
    expect(acceleration!.w).toBeCloseTo(1000 / 60, 10);
    expect(Math.abs(acceleration!.ry)).toBeLessThan(1e-12);
    expect(members[0]!.end.moment).toBeCloseTo((-1000 * 4) / 8, 8);
    // The two halves are cantilevers under q = F/L: the tips lag by q l⁴/8EI.
    expect((w[1]! - w[0]!) / ((250 * 2 ** 4) / (8 * EI))).toBeCloseTo(1, 10);
    expect(residual).toBeLessThan(1e-12);
  });

  it('a free bar pushed at one end: a = 4 F/m there, −2 F/m at the other, moment 4/27 F L at a third (statics)', () => {
    const { acceleration, members } = grillage(bar(1)).solve({ nodes: [{ node: 0, w: 1000 }] });
    expect(acceleration!.w).toBeCloseTo((4 * 1000) / 60, 9);
    expect(acceleration!.w - 4 * acceleration!.ry).toBeCloseTo((-2 * 1000) / 60, 9);
    expect(members[0]!.momentLargest).toBeCloseTo((4 / 27) * 1000 * 4, 7);
    expect(members[0]!.momentMostAt).toBeCloseTo(4 / 3, 10);
  });

  it('a free grid under even pressure and mass does not depend on how it is fixed for solving', () => {
    const free = { ...reference([], true), freeBody: true };
    const { acceleration, residual, w, members } = grillage(free).solve(pressure);
    const mass = 14.704 * (3 * 3 + 7 * 1);
    expect(acceleration!.w).toBeCloseTo(-3000 / mass, 10);
    expect(residual).toBeLessThan(1e-12);
    expect(w[0]).toBeCloseTo(w[20]!, 14);
    // The same balance as supports: hold three far corners, where the reactions must vanish.
    const inertia = -3000 / mass;
    const held = grillage(
      reference(
        [
          { node: 0, w: rigid },
          { node: 2, w: rigid },
          { node: 18, w: rigid },
        ],
        true,
      ),
    ).solve({
      ...pressure,
      members: free.members.map((_, member) => ({ member, force: -14.704 * inertia })),
    });
    for (const r of held.reactions) expect(Math.abs(r.w)).toBeLessThan(1e-9);
    held.members.forEach((m, e) => expect(m.momentLargest).toBeCloseTo(members[e]!.momentLargest, 7));
  });

  it('hung at one point, the grid turns about it and the rest is carried there', () => {
    const hung = { ...reference([{ node: 1, w: rigid }], false), freeBody: true };
    const { acceleration, reactions, residual, w } = grillage(hung).solve({ nodes: [{ node: 19, w: -100 }] });
    expect(residual).toBeLessThan(1e-12);
    expect(Math.abs(acceleration!.rx)).toBeLessThan(1e-12);
    // A rigid body about the hung end: angular acceleration F L / I, I by the members' masses.
    const mass = 14.704;
    const I =
      3 * ((mass * 3 ** 3) / 3) + Array.from({ length: 7 }, (_, i) => mass * (0.5 * i) ** 2).reduce((a, b) => a + b);
    expect(acceleration!.ry).toBeCloseTo((100 * 3) / I, 10);
    const tip = -acceleration!.ry;
    expect(reactions[0]!.w).toBeCloseTo(
      100 + tip * mass * (3 * 4.5 + Array.from({ length: 7 }, (_, i) => 0.5 * i).reduce((a, b) => a + b)),
      7,
    );
    expect(w[1]).toBe(0);
  });
});

describe('refusals', () => {
  const solve =
    (supports: GrillageModel['supports'], change: Partial<GrillageModel> = {}) =>
    () =>
      grillage({ ...reference(supports, false), ...change });
  it('says that nothing holds the grid', () => expect(solve([])).toThrow(/nothing holds the grid/));
  it('names the line about which it can turn', () => {
    expect(
      solve([
        { node: 0, w: rigid },
        { node: 18, w: rigid },
      ]),
    ).toThrow(/turn about the line y = 0 m along x/);
    expect(
      solve([
        { node: 1, w: rigid },
        { node: 4, w: rigid, ry: rigid },
      ]),
    ).toThrow(/turn about the line y = 0.5 m along x/);
    expect(
      solve([
        { node: 0, w: rigid },
        { node: 4, w: rigid },
      ]),
    ).toThrow(/through x = .* in direction \(0\.7071, 0\.7071\)/);
  });
  it('says that it can move up and down', () =>
    expect(solve([{ node: 0, rx: rigid, ry: rigid }])).toThrow(/move up and down as a whole/));
  it('names a node that a beam without torsion stiffness leaves loose', () => {
    const model: GrillageModel = {
      nodes: [
        { x: 0, y: 0 },
        { x: 1, y: 0, name: 'T4 at the hanger' },
      ],
      members: [{ from: 0, to: 1, EI, GJ: 0 }],
      supports: [{ node: 0, w: rigid, rx: rigid, ry: rigid }],
    };
    expect(() => grillage(model)).toThrow(/T4 at the hanger .* can turn about x: nothing holds it/);
  });
  it('refuses a free body without mass, in two parts, and wrong numbers', () => {
    const bare = reference([], false);
    expect(solve([], { members: bare.members.map((m) => ({ ...m, mass: 0 })), freeBody: true })).toThrow(/has no mass/);
    const two: GrillageModel = {
      nodes: [0, 1, 2, 3].map((x) => ({ x, y: 0 })),
      members: [
        { from: 0, to: 1, EI, GJ, mass: 1 },
        { from: 2, to: 3, EI, GJ, mass: 1 },
      ],
      supports: [],
      freeBody: true,
    };
    expect(() => grillage(two)).toThrow(/no single free body/);
    expect(solve(four, { members: [{ from: 0, to: 99, EI, GJ }] })).toThrow(/does not exist/);
    expect(solve(four, { members: [{ from: 0, to: 1, EI: 0, GJ }] })).toThrow(/needs EI and GA above 0/);
    expect(() => grillage(reference(four, false)).solve({ nodes: [{ node: 99, w: 1 }] })).toThrow(
      /no load on this grid/,
    );
    expect(() => grillage(reference(four, false)).solve({ nodes: [{ node: 1, w: NaN }] })).toThrow(
      /no load on this grid/,
    );
  });
});

it('takes 1500 freedoms: a grid cut into 500 nodes deflects as before', () => {
  const fine = grillage(reference(four, true, 16));
  expect(fine.unknowns).toBe(3 * (21 + 32 * 15) - 4);
  const coarse = grillage(reference(four, true)).solve(pressure);
  const { w } = fine.solve(pressure);
  coarse.w.forEach((value, n) => expect(Math.abs(w[n]! - value)).toBeLessThan(1e-10 * 1e-3));
});
