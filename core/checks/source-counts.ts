import type { Model } from '../model.ts';
import type { Source } from '../source.ts';

/** Whether a source has a say for a plate: under its design basis, and with a panel or tube of the metal that the source is of. */
export const countsFor = ({
  basis,
  panels,
  tubes,
}: Pick<Model, 'basis' | 'panels' | 'tubes'>): ((source: Source) => boolean) => {
  const metals = new Set<string>([...panels.values(), ...tubes.values()].map(({ material }) => material.family));
  return ({ safety, metal }) => (!safety || safety === basis.safety) && (!metal || metals.has(metal));
};
