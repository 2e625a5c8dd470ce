import type { Check } from './check.ts';
import { panelBendingFourSides } from './panel-bending-four-sides.ts';
import { panelBendingTwoSides } from './panel-bending-two-sides.ts';
import { panelBendingBolts } from './panel-bending-bolts.ts';
import { panelShear } from './panel-shear.ts';
import { panelDeflectionFourSides } from './panel-deflection-four-sides.ts';
import { panelDeflectionTwoSides } from './panel-deflection-two-sides.ts';
import { panelDeflectionBolts } from './panel-deflection-bolts.ts';
import { boltTension } from './bolt-tension.ts';
import { boltShear } from './bolt-shear.ts';
import { boltCombined } from './bolt-combined.ts';
import { boltBearingPanel } from './bolt-bearing-panel.ts';
import { boltBearingTube } from './bolt-bearing-tube.ts';
import { boltTearOut } from './bolt-tear-out.ts';
import { boltPullThrough } from './bolt-pull-through.ts';
import { boltWallPull } from './bolt-wall-pull.ts';
import { boltAnchorage } from './bolt-anchorage.ts';
import { boltSlip } from './bolt-slip.ts';
import { boltEdgeDistance } from './bolt-edge-distance.ts';
import { boltEdgeDistanceLargest } from './bolt-edge-distance-largest.ts';
import { boltPitch } from './bolt-pitch.ts';
import { boltPitchLargest } from './bolt-pitch-largest.ts';
import { boltHydrogen } from './bolt-hydrogen.ts';
import { boltGroupInPlane } from './bolt-group-in-plane.ts';
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
  panelBendingTwoSides,
  panelBendingBolts,
  panelShear,
  panelDeflectionFourSides,
  panelDeflectionTwoSides,
  panelDeflectionBolts,
  boltTension,
  boltShear,
  boltCombined,
  boltBearingPanel,
  boltBearingTube,
  boltTearOut,
  boltPullThrough,
  boltWallPull,
  boltAnchorage,
  boltSlip,
  boltEdgeDistance,
  boltEdgeDistanceLargest,
  boltPitch,
  boltPitchLargest,
  boltHydrogen,
  boltGroupInPlane,
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
