import { describe, expect, it } from 'vitest';
import { dissect } from '../../../core/solve/sparse/dissect.ts';
import { elimination } from '../../../core/solve/sparse/elimination.ts';
import { nodeGraph } from '../../../core/solve/sparse/node-graph.ts';
import type { StiffnessSystem } from '../../../core/solve/sparse/stiffness-system.ts';
import { chance, randomSystem, shellPlate } from './systems.ts';

const joined = (nodes: number[]) => ({ nodes, stiffness: new Float64Array(36 * nodes.length ** 2).fill(1) });

/** Tubes both ways with a bolted panel in each bay: panels × panels bays of cells × cells shells, fastened to the tubes at
 *  every third node of each side. */
function gridOfPanels(panels: number, cells: number): StiffnessSystem {
  const coordinates: number[] = [];
  const elements: StiffnessSystem['elements'][number][] = [];
  const add = (x: number, y: number, z: number): number => coordinates.push(x, y, z) / 3 - 1;
  const pitch = cells + 2;
  const tubeNodes = new Map<string, number>();
  const tube = (x: number, y: number): number => {
    const key = `${x} ${y}`;
    if (!tubeNodes.has(key)) tubeNodes.set(key, add(x, y, 0));
    return tubeNodes.get(key)!;
  };
  const places = Array.from({ length: panels }, (_, p) => [
    p * pitch,
    ...Array.from({ length: cells / 3 + 1 }, (_, k) => p * pitch + 1 + 3 * k),
  ])
    .flat()
    .concat(panels * pitch);
  for (let line = 0; line <= panels; line++)
    for (let k = 0; k + 1 < places.length; k++) {
      elements.push(joined([tube(places[k]!, line * pitch), tube(places[k + 1]!, line * pitch)]));
      elements.push(joined([tube(line * pitch, places[k]!), tube(line * pitch, places[k + 1]!)]));
    }
  for (let p = 0; p < panels; p++)
    for (let q = 0; q < panels; q++) {
      const at = (i: number, j: number): number => first + j * (cells + 1) + i;
      const [x, y] = [p * pitch + 1, q * pitch + 1];
      const first = coordinates.length / 3;
      for (let j = 0; j <= cells; j++) for (let i = 0; i <= cells; i++) add(x + i, y + j, 0.1);
      for (let j = 0; j < cells; j++)
        for (let i = 0; i < cells; i++) elements.push(joined([at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)]));
      for (let k = 0; k <= cells; k += 3) {
        elements.push(joined([at(k, 0), tube(x + k, q * pitch)]), joined([at(k, cells), tube(x + k, (q + 1) * pitch)]));
        elements.push(joined([at(0, k), tube(p * pitch, y + k)]), joined([at(cells, k), tube((p + 1) * pitch, y + k)]));
      }
    }
  return { coordinates: Float64Array.from(coordinates), elements, held: new Uint8Array(2 * coordinates.length) };
}

describe('nested dissection', () => {
  it('orders each vertex once, whatever the graph', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const system = randomSystem(3 * seed, seed, seed);
      const graph = nodeGraph(system);
      const order = dissect(graph, system.coordinates);
      expect(Array.from(order).sort((a, b) => a - b)).toEqual(Array.from({ length: graph.count }, (_, v) => v));
    }
  });

  it('leaves kept nodes to the end', () => {
    const { coordinates, elements, held } = shellPlate(9, 9, 0.01);
    const kept = Uint8Array.from({ length: 100 }, (_, i) => (i % 7 === 0 ? 1 : 0));
    const graph = nodeGraph({ coordinates, elements, held }, kept);
    const order = dissect(graph, coordinates, kept);
    // each node of a flat plate is two vertices: stretching and bending
    const last = Array.from(order.subarray(-30), (v) => graph.nodes[v]!);
    expect(last.filter((_, i) => i % 2 === 0)).toEqual(Array.from({ length: 15 }, (_, i) => 7 * i));
    expect(last.filter((_, i) => i % 2 === 1)).toEqual(Array.from({ length: 15 }, (_, i) => 7 * i));
  });

  it('takes no more multiplications on a square plate than nested dissection of its squares: 829/84 n³ (George 1973, from memory)', () => {
    // George counts one freedom a node on a mesh of n × n nodes whose cells join all four corners; six freedoms take 6³ as many.
    const n = 64;
    const { flops } = elimination(shellPlate(n - 1, n - 1, 0.01));
    expect(flops / 2 / 216 / n ** 3).toBeLessThan(829 / 84);
  });

  it('is not misled by where nodes stand: a plate with its coordinates shuffled or all alike still orders well', () => {
    const plate = shellPlate(40, 40, 0.01);
    const good = elimination(plate).flops;
    const next = chance(5);
    expect(elimination({ ...plate, coordinates: plate.coordinates.map(() => next()) }).flops).toBeLessThan(2.5 * good);
    expect(elimination({ ...plate, coordinates: new Float64Array(plate.coordinates.length) }).flops).toBeLessThan(
      2.5 * good,
    );
  });

  it('orders a grid with panels without being told which is which, no worse than panels first and the frame by itself', () => {
    const system = gridOfPanels(4, 12);
    const blind = elimination(system).flops;
    // Told: each panel is condensed to its fastened nodes by itself, and the frame with those nodes is one system.
    const each = 13 * 13;
    const isPanel = (node: number): boolean => system.coordinates[3 * node + 2]! > 0;
    const fastened = new Set(
      system.elements.flatMap(({ nodes }) => (nodes.length === 2 && nodes.some(isPanel) ? nodes : [])),
    );
    const firstPanel = Array.from(
      { length: each },
      (_, i) => i + Array.from({ length: system.held.length / 6 }, (_, n) => n).findIndex(isPanel),
    );
    const start = firstPanel[0]!;
    const panel: StiffnessSystem = {
      coordinates: system.coordinates.slice(3 * start, 3 * (start + each)),
      held: new Uint8Array(6 * each),
      elements: system.elements
        .filter(({ nodes }) => nodes.every((node) => node >= start && node < start + each))
        .map(({ nodes }) => joined(nodes.map((node) => node - start))),
    };
    const keptOfPanel = Uint8Array.from(firstPanel, (node) => (fastened.has(node) ? 1 : 0));
    const inside = elimination(panel, keptOfPanel);
    const w = inside.first[inside.count]! - inside.first[inside.count - 1]!;
    const panels = 16 * (inside.flops - w ** 3 / 3);
    expect(blind).toBeLessThan(1.2 * (panels + frameWork(system, isPanel, fastened, each)));
  });
});

/** Work on the frame with the fastened nodes of each panel joined to one another. */
function frameWork(
  system: StiffnessSystem,
  isPanel: (node: number) => boolean,
  fastened: ReadonlySet<number>,
  each: number,
): number {
  const count = system.held.length / 6;
  const start = Array.from({ length: count }, (_, n) => n).findIndex(isPanel);
  // Tubes were numbered first, panels after them in turn.
  const groups = new Map<number, number[]>();
  for (const node of fastened)
    if (isPanel(node)) {
      const panel = Math.floor((node - start) / each);
      groups.set(panel, [...(groups.get(panel) ?? []), node]);
    }
  const held = new Uint8Array(6 * count);
  for (let node = 0; node < count; node++)
    if (isPanel(node) && !fastened.has(node)) held.fill(1, 6 * node, 6 * node + 6);
  return elimination({
    coordinates: system.coordinates,
    held,
    elements: [...system.elements.filter(({ nodes }) => nodes.length === 2), ...[...groups.values()].map(joined)],
  }).flops;
}
