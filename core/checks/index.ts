import type { Check } from './check.ts';
import { panelBendingFourSides } from './panel-bending-four-sides.ts';
import { weldDirectional } from './weld-directional.ts';
import { weldThroat } from './weld-throat.ts';
import { weldSize } from './weld-size.ts';
import { weldEdge } from './weld-edge.ts';
import { weldLength } from './weld-length.ts';
import { weldIntermittent } from './weld-intermittent.ts';
import { tubeBending } from './tube-bending.ts';
import { tubeShear } from './tube-shear.ts';
import { tubeTorsion } from './tube-torsion.ts';
import { tubeAxialBending } from './tube-axial-bending.ts';
import { tubeWallLine } from './tube-wall-line.ts';
import { tubeWallPressure } from './tube-wall-pressure.ts';
import { tubeDeflection } from './tube-deflection.ts';
import { crossingJoint } from './crossing-joint.ts';
import { crossingThroat } from './crossing-throat.ts';
import { crossingWeld } from './crossing-weld.ts';
import { eyeNetTension } from './eye-net-tension.ts';
import { eyeTearOut } from './eye-tear-out.ts';
import { eyeBearing } from './eye-bearing.ts';
import { eyeFoot } from './eye-foot.ts';
import { eyeWeld } from './eye-weld.ts';
import { eyeTubeWall } from './eye-tube-wall.ts';
import { suspensionSlack } from './suspension-slack.ts';
import { hangingStability } from './hanging-stability.ts';
import { panelBuckling } from './panel-buckling.ts';
import { fatigue } from './fatigue.ts';

/** Every check, in the order of the note. */
export const checks: readonly Check[] = [
  panelBendingFourSides,
  weldDirectional,
  weldThroat,
  weldSize,
  weldEdge,
  weldLength,
  weldIntermittent,
  tubeBending,
  tubeShear,
  tubeTorsion,
  tubeAxialBending,
  tubeWallLine,
  tubeWallPressure,
  tubeDeflection,
  crossingJoint,
  crossingThroat,
  crossingWeld,
  eyeNetTension,
  eyeTearOut,
  eyeBearing,
  eyeFoot,
  eyeWeld,
  eyeTubeWall,
  suspensionSlack,
  hangingStability,
  panelBuckling,
  fatigue,
];
