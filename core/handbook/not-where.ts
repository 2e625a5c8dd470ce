/** Why a check was not made somewhere in a sample, by its id. Written by npm run record. */
export const notWhere: Readonly<Record<string, readonly string[]>> = {
  "panel-bending-four-sides": [
    "in this direction the panel is held by cross tubes"
  ],
  "panel-bending-two-sides": [
    "in this direction the panel is held by bolts",
    "in this direction the panel is held by four sides"
  ],
  "panel-bending-bolts": [
    "in this direction the panel is held along four sides",
    "in this direction the panel is held by cross tubes"
  ],
  "panel-stress": [
    "the document takes its forces by hand"
  ],
  "panel-deflection-four-sides": [
    "in this direction the panel is held by cross tubes"
  ],
  "panel-deflection-two-sides": [
    "in this direction the panel is held by bolts",
    "in this direction the panel is held by four sides"
  ],
  "panel-deflection-bolts": [
    "in this direction the panel bears on lines"
  ],
  "bolt-tension": [
    "the panel is welded"
  ],
  "bolt-shear": [
    "the panel is welded"
  ],
  "bolt-combined": [
    "the panel is welded"
  ],
  "bolt-bearing-panel": [
    "the panel is welded"
  ],
  "bolt-bearing-tube": [
    "the panel is welded"
  ],
  "bolt-tear-out": [
    "the panel is welded"
  ],
  "bolt-block-tear": [
    "the panel is welded"
  ],
  "bolt-pull-through": [
    "the panel is welded"
  ],
  "bolt-wall-pull": [
    "the panel is welded"
  ],
  "bolt-anchorage": [
    "the bolt is no one-sided fixing (through-bolt with sleeve)",
    "the panel is welded"
  ],
  "bolt-stud": [
    "the bolt is no welded stud",
    "the panel is welded"
  ],
  "bolt-thread-engagement": [
    "the bolt does not screw into a tapped pad",
    "the panel is welded"
  ],
  "bolt-pad-weld": [
    "the bolt does not screw into a tapped pad",
    "the panel is welded"
  ],
  "bolt-clamp-slip": [
    "the bolts go into the tube: they do not clamp round it",
    "the panel is welded"
  ],
  "bolt-slip": [
    "the panel is welded"
  ],
  "bolt-separation": [
    "the document states no tightening torque",
    "the panel is welded"
  ],
  "bolt-sleeve": [
    "the document states no tightening torque",
    "the panel is welded"
  ],
  "bolt-washer-pressure": [
    "the panel is of metal: it does not creep under a washer",
    "the panel is welded"
  ],
  "bolt-edge-distance": [
    "the panel is welded"
  ],
  "bolt-edge-distance-largest": [
    "the panel is welded"
  ],
  "bolt-pitch": [
    "the panel is welded"
  ],
  "bolt-pitch-largest": [
    "the panel is welded"
  ],
  "bolt-access": [
    "the panel is welded"
  ],
  "bolt-hydrogen": [
    "the panel is welded"
  ],
  "bolt-group-in-plane": [
    "the panel is welded"
  ],
  "bolt-group-ultimate": [
    "the panel is welded"
  ],
  "weld-directional": [
    "the panel is bolted"
  ],
  "weld-throat": [
    "the document judges its welds by the directional method",
    "the panel is bolted"
  ],
  "weld-size": [
    "the panel is bolted"
  ],
  "weld-edge": [
    "the panel is bolted"
  ],
  "weld-corner": [
    "the panel is bolted",
    "the panel's edges lie on the flats of their tubes"
  ],
  "weld-flare": [
    "the panel is bolted",
    "the panel's edges lie on the flats of their tubes"
  ],
  "weld-length": [
    "the panel is bolted"
  ],
  "weld-intermittent": [
    "the panel is bolted",
    "the weld is continuous"
  ],
  "weld-end-return": [
    "the panel is bolted",
    "the weld closes on itself: it has no end at a corner"
  ],
  "weld-aluminium": [
    "the panel is bolted",
    "the parts are not of aluminium"
  ],
  "weld-group-in-plane": [
    "the panel is bolted"
  ],
  "weld-group-ultimate": [
    "the panel is bolted"
  ],
  "weld-group-across": [
    "the panel is bolted",
    "the panel is welded on two sides: one by itself holds nothing square to it, so prop the panel"
  ],
  "weld-plug": [
    "the panel has no plug welds",
    "the panel is bolted"
  ],
  "weld-plug-size": [
    "the panel has no plug welds",
    "the panel is bolted"
  ],
  "weld-plug-pitch": [
    "the panel has no plug welds",
    "the panel is bolted"
  ],
  "tube-axial-bending": [
    "nothing pushes along this tube"
  ],
  "tube-wall-line": [
    "no panel bears on this tube"
  ],
  "tube-wall-pressure": [
    "the tube is flooded: the pressure is the same inside and outside"
  ],
  "tube-wall-bent": [
    "the tube is flooded: the pressure is the same inside and outside"
  ],
  "tube-wall-collapse": [
    "the tube is flooded: the pressure is the same inside and outside"
  ],
  "crossing-joint": [
    "a through tube welded along its flanks has no published joint formula",
    "the cross tube is wider than 0.85 of the face: the side walls of the main tube decide"
  ],
  "crossing-side-wall": [
    "a through tube welded along its flanks has no published joint formula",
    "the cross tube is no wider than 0.85 of the face: the face yields first"
  ],
  "crossing-effective-width": [
    "a through tube welded along its flanks has no published joint formula",
    "the cross tube is no wider than 0.85 of the face: the face yields first"
  ],
  "crossing-round": [
    "a through tube welded along its flanks has no published joint formula",
    "the cross tube is no wider than 0.85 of the face: the face yields first",
    "the cross tube is wider than 0.85 of the face: the side walls of the main tube decide"
  ],
  "crossing-throat": [
    "the cross tubes lie on the main tubes"
  ],
  "crossing-weld": [
    "a formula is held: see the walls of the tubes"
  ],
  "crossing-flare": [
    "the cross tubes end on the corners of the main tubes where these still are nearly flat: their welds are fillets",
    "the cross tubes end on the flat of the main tubes: their welds are fillets"
  ],
  "eye-cheek-weld": [
    "the eye has no cheek plates"
  ],
  "eye-foot-plate": [
    "the eye is welded to its tube: there is no bolted plate with a stem"
  ],
  "eye-foot-bolts": [
    "the eye is welded to its tube: there is no bolted plate with a stem"
  ],
  "eye-foot-wall": [
    "the eye is welded to its tube: there is no bolted plate with a stem"
  ],
  "suspension-slack": [
    "a strut pushes as well as pulls"
  ],
  "hanging-stability": [
    "three attachments or more hold it level"
  ],
  "lift-drain": [
    "no bay holds water like a tray"
  ],
  "recovery-acoustic": [
    "no command is given by sound"
  ],
  "panel-buckling": [
    "the plate is not solved as one structure: panels are judged by what tubes with panels on them can hand over"
  ],
  "fatigue-weld-root": [
    "the panel is bolted"
  ],
  "fatigue-weld-toe": [
    "the panel is bolted"
  ],
  "fatigue-weld-corner": [
    "the panel is bolted",
    "the panel's edges lie on the flats of their tubes"
  ],
  "fatigue-weld-end": [
    "no panel is welded to this tube"
  ],
  "fatigue-weld-intermittent": [
    "the panel is bolted",
    "the weld is continuous"
  ],
  "fatigue-weld-plug": [
    "the panel has no plug welds",
    "the panel is bolted"
  ],
  "fatigue-weld-plug-shear": [
    "the panel has no plug welds",
    "the panel is bolted"
  ],
  "fatigue-bolt-hole-panel": [
    "the panel is welded"
  ],
  "fatigue-bolt-hole-tube": [
    "no bolt drills this tube"
  ],
  "fatigue-bolt-tension": [
    "the panel is welded"
  ],
  "fatigue-bolt-shear": [
    "friction carries the shear as long as the joint does not slip: see the check of slip",
    "the panel is welded"
  ],
  "fatigue-eye-foot": [
    "this eye is for lifting: it sees no cycles in service"
  ],
  "fatigue-eye-foot-bolts": [
    "the eye is welded to its tube: its foot has no bolts"
  ],
  "fatigue-eye-root": [
    "this eye is for lifting: it sees no cycles in service"
  ],
  "fatigue-eye-hole": [
    "this eye is for lifting: it sees no cycles in service"
  ],
  "fatigue-eye-on-tube": [
    "this eye is for lifting: it sees no cycles in service"
  ],
  "fatigue-sealed-wall": [
    "the tube is flooded: the pressure is the same inside and outside"
  ],
  "anode-mass": [
    "the document describes no anodes"
  ],
  "anode-current-initial": [
    "the document describes no anodes"
  ],
  "anode-current-final": [
    "the document describes no anodes"
  ]
};
