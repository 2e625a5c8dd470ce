import { curveClosed, type ClosingGains } from '../hydrodynamics/closing-gains.ts';
import type { CurvePoint } from '../hydrodynamics/heave-curve.ts';
import { hydrodynamicsOf } from '../hydrodynamics/hydrodynamics-of.ts';
import { motionInWave } from '../hydrodynamics/motion-in-wave.ts';
import { seaAtPlate } from '../hydrodynamics/sea-at-plate.ts';
import type { Model } from '../model.ts';
import type { Print } from '../print-in.ts';
import type { Block } from './note.ts';

/** Metres deeper, and bays, that are set against each other. */
const deeper = 10;
const bays = 10;

interface Way {
  readonly title: string;
  readonly curve: readonly CurvePoint[];
  readonly deeper: number;
}

/** What ten metres deeper gives and what ten more closed bays give (as many as are open; where none is, what the last ten gave). */
export function depthAgainstArea(model: Model, gains: ClosingGains, shut: readonly string[], print: Print): Block[] {
  const { document, geometry } = model;
  const { bed } = document.hydrodynamics ?? {};
  if (!document.hydrodynamics?.sea) return [{ kind: 'paragraph', text: 'What hanging deeper gives against closing more cannot be told: the sea is not stated.' }]; // prettier-ignore
  const { curve } = hydrodynamicsOf(model);
  const order = gains.steps.at(-1)!.closed;
  const open = order.filter((id) => !shut.includes(id));
  const isRoom = bed === undefined || bed.si > document.water.depth.si + deeper;
  const other: Way =
    open.length > 0
      ? { title: `${words(Math.min(bays, open.length))} more closed`, curve: curveClosed(model, [...shut, ...open.slice(0, bays)]), deeper: 0 } // prettier-ignore
      : { title: `The last ${words(Math.min(bays, order.length - 1))} of the order left open`, curve: curveClosed(model, order.slice(0, Math.max(1, order.length - bays))), deeper: 0 }; // prettier-ignore
  const ways: Way[] = [
    // On the same coarse lattice as the others where the option closes bays whole.
    { title: 'As it is', curve, deeper: 0 },
    ...(isRoom ? [{ title: `${print.quantity(deeper, 'm', 3)} deeper`, curve, deeper }] : []),
    other,
  ];
  const amplitude = document.hydrodynamics.motion?.amplitude.si;
  const area = geometry.areas.outline;
  const missing = new Set<string>();
  const rows = ways.map((way): string[] => {
    const at = way.curve.find((point) => point.amplitude === amplitude);
    const depth = document.water.depth.si + way.deeper;
    const sea = seaAtPlate({ ...document, water: { ...document.water, depth: { si: depth, typed: '' } } })!;
    const moved = motionInWave(model, way.curve, area, { deeper: way.deeper });
    if ('missing' in moved) missing.add(moved.missing);
    return [
      way.title,
      at ? print.quantity(at.addedMass, 'kg', 3) : '–',
      at && at.drag !== null ? print.quantity(at.drag * area, 'm^2', 3) : '–',
      print.quantity(sea.significantHeight, 'm', 3),
      'missing' in moved ? '–' : print.quantity(moved.plate, 'm', 3),
      'missing' in moved ? '–' : print.quantity(moved.pull, 'kN', 3),
    ];
  });
  return [
    {
      kind: 'table',
      caption: 'Depth against area: significant height of the water’s motion at the plate, and in one wave of significant height and peak period the motion that is left and the reaction, amplitudes', // prettier-ignore
      columns: [
        { title: '', width: 0.24 },
        { title: 'Added mass', width: 0.15, align: 'right' },
        { title: 'Drag area', width: 0.15, align: 'right' },
        { title: 'Water’s motion', width: 0.16, align: 'right' },
        { title: 'Motion left', width: 0.15, align: 'right' },
        { title: 'Reaction', width: 0.15, align: 'right' },
      ],
      rows,
    },
    ...(isRoom ? [] : [{ kind: 'paragraph', text: `There is no room for ${print.quantity(deeper, 'm', 3)} more depth above the bed.` } as const]), // prettier-ignore
    ...(missing.size > 0 ? [{ kind: 'list', tone: 'plain', items: [...missing].map((why) => `Motion left and reaction: ${why}.`) } as const] : []), // prettier-ignore
  ];
}

const words = (n: number): string => (n === 1 ? 'one bay' : `${n} bays`);
