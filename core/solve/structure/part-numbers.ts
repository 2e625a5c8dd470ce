import type { Structure } from './structure.ts';

/** For each element of a structure with its contact (beams, shells, ties, joints, contacts: see `partElements` and
 *  `withContact`) the panel that it belongs to, or -1: what is eliminated by itself. */
export function partNumbers({ beams, shells, ties, joints = [], contacts }: Structure): Int32Array {
  const panelOf = ({ panel }: { readonly panel: number }): number => panel;
  const none = (): number => -1;
  return Int32Array.from([
    ...beams.map(none),
    ...shells.map(panelOf),
    ...ties.map(panelOf),
    ...joints.map(none),
    ...contacts.map(panelOf),
  ]);
}
