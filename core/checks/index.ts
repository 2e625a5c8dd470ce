import type { Check } from './check.ts';
import { panelBendingFourSides } from './panel-bending-four-sides.ts';
import { panelBendingTwoSides } from './panel-bending-two-sides.ts';
import { panelBendingBolts } from './panel-bending-bolts.ts';
import { panelStress } from './panel-stress.ts';
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
import { boltBlockTear } from './bolt-block-tear.ts';
import { boltPullThrough } from './bolt-pull-through.ts';
import { boltWallPull } from './bolt-wall-pull.ts';
import { boltAnchorage } from './bolt-anchorage.ts';
import { boltStud } from './bolt-stud.ts';
import { boltThreadEngagement } from './bolt-thread-engagement.ts';
import { boltPadWeld } from './bolt-pad-weld.ts';
import { boltClampSlip } from './bolt-clamp-slip.ts';
import { boltSlip } from './bolt-slip.ts';
import { boltSeparation } from './bolt-separation.ts';
import { boltSleeve } from './bolt-sleeve.ts';
import { boltWasherPressure } from './bolt-washer-pressure.ts';
import { boltEdgeDistance } from './bolt-edge-distance.ts';
import { boltEdgeDistanceLargest } from './bolt-edge-distance-largest.ts';
import { boltPitch } from './bolt-pitch.ts';
import { boltPitchLargest } from './bolt-pitch-largest.ts';
import { boltAccess } from './bolt-access.ts';
import { boltHydrogen } from './bolt-hydrogen.ts';
import { boltGroupInPlane } from './bolt-group-in-plane.ts';
import { boltGroupUltimate } from './bolt-group-ultimate.ts';
import { weldDirectional } from './weld-directional.ts';
import { weldThroat } from './weld-throat.ts';
import { weldSize } from './weld-size.ts';
import { weldEdge } from './weld-edge.ts';
import { weldCorner } from './weld-corner.ts';
import { weldFlare } from './weld-flare.ts';
import { weldLength } from './weld-length.ts';
import { weldIntermittent } from './weld-intermittent.ts';
import { weldEndReturn } from './weld-end-return.ts';
import { weldAluminium } from './weld-aluminium.ts';
import { weldGroupInPlane } from './weld-group-in-plane.ts';
import { weldGroupUltimate } from './weld-group-ultimate.ts';
import { weldGroupAcross } from './weld-group-across.ts';
import { weldPlug } from './weld-plug.ts';
import { weldPlugSize } from './weld-plug-size.ts';
import { weldPlugPitch } from './weld-plug-pitch.ts';
import { tubeBending } from './tube-bending.ts';
import { tubeShear } from './tube-shear.ts';
import { tubeTorsion } from './tube-torsion.ts';
import { tubeAxialBending } from './tube-axial-bending.ts';
import { tubeWallLine } from './tube-wall-line.ts';
import { tubeWallPressure } from './tube-wall-pressure.ts';
import { tubeWallBent } from './tube-wall-bent.ts';
import { tubeWallCollapse } from './tube-wall-collapse.ts';
import { tubeDeflection } from './tube-deflection.ts';
import { crossingJoint } from './crossing-joint.ts';
import { crossingSideWall } from './crossing-side-wall.ts';
import { crossingEffectiveWidth } from './crossing-effective-width.ts';
import { crossingRound } from './crossing-round.ts';
import { crossingThroat } from './crossing-throat.ts';
import { crossingWeld } from './crossing-weld.ts';
import { crossingFlare } from './crossing-flare.ts';
import { eyeNetTension } from './eye-net-tension.ts';
import { eyeTearOut } from './eye-tear-out.ts';
import { eyeBearing } from './eye-bearing.ts';
import { eyeFoot } from './eye-foot.ts';
import { eyeWeld } from './eye-weld.ts';
import { eyeWeldUltimate } from './eye-weld-ultimate.ts';
import { eyeCheekWeld } from './eye-cheek-weld.ts';
import { eyeFootPlate } from './eye-foot-plate.ts';
import { eyeFootBolts } from './eye-foot-bolts.ts';
import { eyeFootWall } from './eye-foot-wall.ts';
import { eyeTubeWall } from './eye-tube-wall.ts';
import { suspensionSlack } from './suspension-slack.ts';
import { hangingStability } from './hanging-stability.ts';
import { liftAFrame } from './lift-a-frame.ts';
import { liftWinch } from './lift-winch.ts';
import { liftLine } from './lift-line.ts';
import { liftSling } from './lift-sling.ts';
import { liftShackle } from './lift-shackle.ts';
import { liftSlack } from './lift-slack.ts';
import { liftLoweringSpeed } from './lift-lowering-speed.ts';
import { liftDrain } from './lift-drain.ts';
import { recoveryRope } from './recovery-rope.ts';
import { recoveryFloatReserve } from './recovery-float-reserve.ts';
import { recoveryFloatVisible } from './recovery-float-visible.ts';
import { recoveryFloatDepth } from './recovery-float-depth.ts';
import { recoveryReleaseLoad } from './recovery-release-load.ts';
import { recoveryReleaseLeastPull } from './recovery-release-least-pull.ts';
import { recoveryReleaseEndurance } from './recovery-release-endurance.ts';
import { recoveryAcoustic } from './recovery-acoustic.ts';
import { recoveryCanister } from './recovery-canister.ts';
import { recoveryCanisterBolts } from './recovery-canister-bolts.ts';
import { panelBucklingByHand } from './panel-buckling-by-hand.ts';
import { panelBuckling } from './panel-buckling.ts';
import { fatigueWeldCorner } from './fatigue-weld-corner.ts';
import { fatigueWeldRoot } from './fatigue-weld-root.ts';
import { fatigueWeldToe } from './fatigue-weld-toe.ts';
import { fatigueWeldEnd } from './fatigue-weld-end.ts';
import { fatigueWeldIntermittent } from './fatigue-weld-intermittent.ts';
import { fatigueWeldPlug } from './fatigue-weld-plug.ts';
import { fatigueWeldPlugShear } from './fatigue-weld-plug-shear.ts';
import { fatiguePlateEdge } from './fatigue-plate-edge.ts';
import { fatigueBoltHolePanel } from './fatigue-bolt-hole-panel.ts';
import { fatigueBoltHoleTube } from './fatigue-bolt-hole-tube.ts';
import { fatigueBoltTension } from './fatigue-bolt-tension.ts';
import { fatigueBoltShear } from './fatigue-bolt-shear.ts';
import { fatigueCrossingToe } from './fatigue-crossing-toe.ts';
import { fatigueCrossingRoot } from './fatigue-crossing-root.ts';
import { fatigueEyeFoot } from './fatigue-eye-foot.ts';
import { fatigueEyeFootBolts } from './fatigue-eye-foot-bolts.ts';
import { fatigueEyeRoot } from './fatigue-eye-root.ts';
import { fatigueEyeHole } from './fatigue-eye-hole.ts';
import { fatigueEyeOnTube } from './fatigue-eye-on-tube.ts';
import { fatigueSealedWall } from './fatigue-sealed-wall.ts';
import { anodeMass } from './anode-mass.ts';
import { anodeCurrentInitial } from './anode-current-initial.ts';
import { anodeCurrentFinal } from './anode-current-final.ts';

/** Every check, in the order of the note. */
export const checks: readonly Check[] = [
  panelBendingFourSides,
  panelBendingTwoSides,
  panelBendingBolts,
  panelStress,
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
  boltBlockTear,
  boltPullThrough,
  boltWallPull,
  boltAnchorage,
  boltStud,
  boltThreadEngagement,
  boltPadWeld,
  boltClampSlip,
  boltSlip,
  boltSeparation,
  boltSleeve,
  boltWasherPressure,
  boltEdgeDistance,
  boltEdgeDistanceLargest,
  boltPitch,
  boltPitchLargest,
  boltAccess,
  boltHydrogen,
  boltGroupInPlane,
  boltGroupUltimate,
  weldDirectional,
  weldThroat,
  weldSize,
  weldEdge,
  weldCorner,
  weldFlare,
  weldLength,
  weldIntermittent,
  weldEndReturn,
  weldAluminium,
  weldGroupInPlane,
  weldGroupUltimate,
  weldGroupAcross,
  weldPlug,
  weldPlugSize,
  weldPlugPitch,
  tubeBending,
  tubeShear,
  tubeTorsion,
  tubeAxialBending,
  tubeWallLine,
  tubeWallPressure,
  tubeWallBent,
  tubeWallCollapse,
  tubeDeflection,
  crossingJoint,
  crossingSideWall,
  crossingEffectiveWidth,
  crossingRound,
  crossingThroat,
  crossingWeld,
  crossingFlare,
  eyeNetTension,
  eyeTearOut,
  eyeBearing,
  eyeFoot,
  eyeWeld,
  eyeWeldUltimate,
  eyeCheekWeld,
  eyeFootPlate,
  eyeFootBolts,
  eyeFootWall,
  eyeTubeWall,
  suspensionSlack,
  hangingStability,
  liftAFrame,
  liftWinch,
  liftLine,
  liftSling,
  liftShackle,
  liftSlack,
  liftLoweringSpeed,
  liftDrain,
  recoveryRope,
  recoveryFloatReserve,
  recoveryFloatVisible,
  recoveryFloatDepth,
  recoveryReleaseLoad,
  recoveryReleaseLeastPull,
  recoveryReleaseEndurance,
  recoveryAcoustic,
  recoveryCanister,
  recoveryCanisterBolts,
  panelBucklingByHand,
  panelBuckling,
  fatigueWeldRoot,
  fatigueWeldToe,
  fatigueWeldCorner,
  fatigueWeldEnd,
  fatigueWeldIntermittent,
  fatigueWeldPlug,
  fatigueWeldPlugShear,
  fatiguePlateEdge,
  fatigueBoltHolePanel,
  fatigueBoltHoleTube,
  fatigueBoltTension,
  fatigueBoltShear,
  fatigueCrossingToe,
  fatigueCrossingRoot,
  fatigueEyeFoot,
  fatigueEyeFootBolts,
  fatigueEyeRoot,
  fatigueEyeHole,
  fatigueEyeOnTube,
  fatigueSealedWall,
  anodeMass,
  anodeCurrentInitial,
  anodeCurrentFinal,
];
