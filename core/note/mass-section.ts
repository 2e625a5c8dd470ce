import type { Model } from '../model.ts';
import { mergedRows } from './merged-rows.ts';
import type { Block, Section } from './note.ts';
import type { Print } from '../print-in.ts';

/** Mass by part, volumes, weight in water, how it hangs, water held and air trapped. */
export function massSection({ mass, geometry }: Model, print: Print): Section {
  const { areas } = geometry;
  const kg = (value: number) => print.quantity(value, 'kg');
  const at = (point: readonly number[]) => point.map((c) => print.drawn(c)).join(', ');
  const { hanging } = mass;
  const degrees = (rad: number) =>
    `${((rad * 180) / Math.PI).toFixed(2)}°`.replace(/^-0\.00°/, '0.00°').replace('-', '−');
  const blocks: Block[] = [
    {
      kind: 'table',
      caption: 'Mass in air, by part',
      columns: [
        { title: 'Part', width: 0.34 },
        { title: 'Mass', width: 0.14, align: 'right' },
        { title: 'Volume of material', width: 0.18, align: 'right' },
        { title: `Centre x, y, z, ${print.unit('mm')}`, width: 0.34, align: 'right' },
      ],
      rows: [
        ...mass.parts.map((part) => [part.name, kg(part.mass), print.quantity(part.volume, 'm^3'), at(part.centre)]),
        ['Total', kg(mass.total), '', at(mass.centre)],
      ],
      loud: [mass.parts.length],
    },
    {
      kind: 'table',
      caption: 'Weight in water',
      columns: [
        { title: 'State of the tubes', width: 0.34 },
        { title: 'Displaced', width: 0.22, align: 'right' },
        { title: 'Weight in water', width: 0.22, align: 'right' },
        { title: 'As a mass', width: 0.22, align: 'right' },
      ],
      rows: [
        ...(['asBuilt', 'flooded', 'sealed'] as const).map((state) => [
          { asBuilt: 'as built', flooded: 'all flooded', sealed: 'all sealed' }[state],
          print.quantity(mass.displaced[state], 'm^3'),
          print.quantity(mass.submergedWeight[state], 'kN'),
          kg(mass.submergedWeight[state] / 9.80665),
        ]),
        ['as built, least', '', print.quantity(mass.least.water.weight, 'kN'), kg(mass.least.water.weight / 9.80665)],
      ],
    },
    {
      kind: 'paragraph',
      text: 'Where weight helps (a line must stay taut, a force up is held down) its least counts: allowances for weld metal and rolling, coating, and what tubes and panels corrode in the life are taken off. Extras stay: leave out what will waste away, such as anodes.',
    },
    {
      kind: 'paragraph',
      text: `Water inside flooded tubes: ${kg(mass.entrainedWater)}. It moves with the plate and is part of the moving mass, but neither of the weight nor of the added mass. Inertia about the centre of mass, about x, y and z and without that water: ${mass.inertia.map((i) => print.quantity(i, 'kg*m^2')).join(', ')}.`,
    },
    {
      kind: 'paragraph',
      text: `Plan areas: outline ${print.quantity(areas.outline, 'm^2')}, covered ${print.quantity(areas.solid, 'm^2')}, open ${print.quantity(areas.open, 'm^2')} (${((100 * areas.open) / areas.outline).toFixed(1)} % of the outline).`,
    },
    {
      kind: 'paragraph',
      text: `Hanging: the point of hang lies ${print.quantity(hanging.heightAboveMass, 'mm')} above the centre of mass${hanging.heightAboveMass > 0 ? '' : ' (unstable)'}; tilt about x and y ${(hanging.tilt.water ?? []).map(degrees).join(' and ')} in water, ${hanging.tilt.air.map(degrees).join(' and ')} in air.${hanging.worstOpenBay ? ` With the panel of bay ${hanging.worstOpenBay.bay} left open it is ${degrees(hanging.worstOpenBay.tilt)}.` : ''}`,
    },
  ];
  const traps = [
    ...mass.trays.map((trap) => ({ ...trap, what: 'water, like a tray' })),
    ...mass.bells.map((trap) => ({ ...trap, what: 'air, like a bell' })),
  ];
  if (traps.length > 0)
    blocks.push({
      kind: 'table',
      caption: 'Water held and air trapped by closed bays',
      columns: [
        { title: 'Bays', width: 0.2 },
        { title: 'Holds', width: 0.18 },
        { title: 'Level', width: 0.14, align: 'right' },
        { title: 'Tilted', width: 0.14, align: 'right' },
        { title: 'Effect', width: 0.16, align: 'right' },
        { title: 'Drains or vents in', width: 0.18, align: 'right' },
      ],
      ...mergedRows(
        traps.map(({ bay, what, level, tilted, effect, drainTime }) => ({
          loud: drainTime === null,
          cells: [
            bay,
            what,
            print.quantity(level, 'm^3', 3),
            print.quantity(tilted, 'm^3', 3),
            what.startsWith('water') ? print.quantity(effect, 'kg', 3) : print.quantity(effect, 'kN', 3),
            drainTime === null ? 'never' : `${drainTime.toPrecision(3)} s`,
          ],
        })),
        0,
      ),
    });
  return { title: 'Mass, areas and weight in water', blocks };
}
