import type { NamedLoading } from '../../loads/situation.ts';
import type { SolvedLoading } from '../solve-plate.ts';

/** The loads that a solved loading was solved with. */
export const loadingOf = ({ situation, loading }: SolvedLoading): NamedLoading =>
  situation.loadings.find(({ name }) => name === loading)!;
