import { plateSupports } from '../plate-supports.ts';
import type { SupportPart } from '../../solve/structure/structure.ts';
import type { ReadyPlate, SolvedLoading } from '../solve-plate.ts';

/** Supports of a solved loading, and which of them carry: there, and not gone slack. */
export interface ActiveSupports {
  readonly parts: readonly SupportPart[];
  readonly present: readonly number[];
  readonly active: readonly number[];
}

export function activeSupports(
  { structure }: ReadyPlate,
  { situation, variant, answer }: SolvedLoading,
): ActiveSupports {
  const parts = plateSupports(structure, situation.supports!);
  const present = situation.present[variant]!;
  return { parts, present, active: present.filter((i) => !answer.slack.includes(i)) };
}
