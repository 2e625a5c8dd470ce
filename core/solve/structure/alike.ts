import type { Structure } from './structure.ts';

/** A structure whose lengths and stiffnesses are rounded to what means anything, so that parts which differ by where they
 *  stand have the same numbers to the last bit: equal panels are then known as equal. Lengths to a picometre, stiffnesses and
 *  areas to twelve digits. */
export function alike(structure: Structure): Structure {
  return {
    ...structure,
    shells: structure.shells.map((shell) => ({ ...shell, a: pico(shell.a), b: pico(shell.b) })),
    ties: structure.ties.map((tie) => ({
      ...tie,
      offsets: [offset(tie.offsets[0]), offset(tie.offsets[1])],
      stiffness: {
        axial: twelve(tie.stiffness.axial),
        shear: twelve(tie.stiffness.shear),
        bending: twelve(tie.stiffness.bending),
        torsion: twelve(tie.stiffness.torsion),
      },
    })),
    contacts: structure.contacts.map((contact) => ({
      ...contact,
      offset: offset(contact.offset),
      stiffness: twelve(contact.stiffness),
      area: twelve(contact.area),
    })),
  };
}

const pico = (length: number): number => Math.round(1e12 * length) / 1e12 + 0;
const offset = ([x, y, z]: readonly [number, number, number]): [number, number, number] => [pico(x), pico(y), pico(z)];
const twelve = (value: number): number => Number(value.toPrecision(12));
