import type { RecoveryFields } from '../document/recovery-field.ts';
import { bendPart, ropeStrength, type RopeParts } from './rope-strength.ts';
import { ropeMaterial } from './rope-materials.ts';
import { secondsInYear } from './lift-stages.ts';

/** What is left of the rope's strength, part by part. */
export function ropePartsOf({ rope, deployment }: RecoveryFields): RopeParts {
  return {
    splice: rope.splice,
    bend: bendPart(rope.bend?.si ?? Infinity, rope.diameter.si),
    wear: rope.wear,
    wet: ropeMaterial[rope.material].wet,
    age: rope.perYear ** (deployment.si / secondsInYear),
  };
}

/** N, at the end of the deployment. */
export const strengthOfRope = (recovery: RecoveryFields): number =>
  ropeStrength(recovery.rope.breakingStrength.si, ropePartsOf(recovery));

/** Part longer under a pull: in proportion to the breaking strength; an upper bound of a rope's own curve, which is steeper first. */
export const ropeStretch = ({ rope }: RecoveryFields, pull: number): number =>
  ((rope.stretchAtBreak ?? ropeMaterial[rope.material].stretchAtBreak) * pull) / rope.breakingStrength.si;
