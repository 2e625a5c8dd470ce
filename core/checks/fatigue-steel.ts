import type { Material } from '../catalogue/rows.ts';
import { missing, type Missing } from './check.ts';

/** What is missing for a material whose fatigue in the sea no curve here covers; undefined for carbon steel. */
export const carbonSteel = ({ family, title }: Pick<Material, 'family' | 'title'>): Missing | undefined =>
  family === 'carbon steel'
    ? undefined
    : missing(
        `an S-N curve for ${title} in the sea: those held here are for carbon-manganese steel (DNV-RP-C203, 1.2)`,
      );
