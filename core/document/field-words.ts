/** Words for the parts of a field's path, so that a message reads "loads, service force" beside `loads.service.force`. */
const words: Readonly<Record<string, string>> = {
  mainTubes: 'main tubes', crossTubes: 'cross tubes', padEyes: 'pad eyes', jointThroat: 'throat of the joint welds', inPlane: 'turning in plane', outOfPlane: 'turning out of plane', edgeDistance: 'edge distance', cornerNotch: 'corner notch',
  lossPerFace: 'corrosion loss on each face', tubeOutside: 'outside of tubes', tubeInside: 'inside of tubes', returnPeriod: 'return period', wavePeriod: 'wave period',
  cyclesPerYear: 'cycles a year', pressureShape: 'pressure shape', middleOverMean: 'middle over mean', liftOut: 'lifting out', liftInAir: 'lift in air', crossing: 'crossing the surface',
  dynamicFactor: 'dynamic factor', dragCoefficient: 'drag coefficient', slamCoefficient: 'slam coefficient', holeDiameter: 'hole diameter', pinDiameter: 'pin diameter', weldThroat: 'weld throat',
  oneSided: 'one-sided fixing', coatingLoss: 'loss by the coating',
  onMain: 'onto main tubes', onCross: 'onto cross tubes', mainLow: 'onto the main tube of lower y', mainHigh: 'onto the main tube of higher y',
  crossLow: 'onto the cross tube of lower x', crossHigh: 'onto the cross tube of higher x', dryDensity: 'dry density', longTerm: 'long-term values', hardnessLimit: 'hardness limit', slipFactor: 'slip factor',
  threadsInShearPlane: 'threads in the shear plane', basis: 'design basis', cathodic: 'cathodic protection', yieldStrength: 'yield strength', ultimateStrength: 'ultimate strength',
  youngModulus: 'modulus', upToThickness: 'up to a thickness of', correlationFactor: 'beta_w', heatAffected: 'beside a weld', across: 'across the fibres', outerRadius: 'outer radius', innerRadius: 'inner radius', nominalWall: 'wall as ordered',
  preload: 'preload of the bolts', ofStrength: 'part of the strength', tensileArea: 'tensile area', headAcrossFlats: 'across flats', headAcrossCorners: 'across corners', headHeight: 'height of the head', nutHeight: 'height of the nut', washerOuter: 'washer', washerInner: 'bore of the washer', washerThickness: 'thickness of the washer',
  holeFine: 'fine hole', holeMedium: 'medium hole', holeCoarse: 'coarse hole', holeNormal: 'normal hole', holeOversize: 'oversize hole', shortSlotLength: 'short slot', longSlotLength: 'long slot', alphaV: 'alpha_v', alphaVShank: 'alpha_v of the shank',
  testUsed: 'test used in the design', travelUp: 'travel grows', forcePositive: 'force is positive when the line', travelUnit: 'unit of travel', forceUnit: 'unit of force', timeUnit: 'unit of time', travelFactor: 'factor on travel', forceFactor: 'factor on force', forceZero: 'zero of the load cell', forceLate: 'delay of the force', waterInside: 'water inside the tubes', rigMass: 'mass of the rig', delayBound: 'bound on the delay', addedMass: 'added mass', keuleganCarpenter: 'Keulegan-Carpenter number', rowsKeptOut: 'rows kept out',
  labourPerHour: 'labour for an hour', platePerKg: 'plate for a kg', cutPerMetre: 'cutting for a metre', perHole: 'drilling for a hole', perBolt: 'a bolt', weldPerMetre: 'welding for a metre',
  significantHeight: 'significant height', peakPeriod: 'peak period', bed: 'sea bed', growth: 'marine growth',
  nominal: 'nominal stresses', shearThreads: 'shear with threads', shearShank: 'shear of the shank', hardnessMax: 'largest hardness HV', largestRange: 'largest range', inCycles: 'cycles of the largest range', forcePerMetre: 'force for a metre of wave amplitude', apart: 'slams and snaps', boltClasses: 'bolt classes', weldMetals: 'weld metals', stockPlates: 'plate stock',
};

/** The path in words: `grid.mainTubes.spacing` → "grid, main tubes, spacing". */
export const fieldWords = (path: string): string =>
  path
    .split('.')
    .map((part) => (Object.hasOwn(words, part) ? words[part] : part))
    .join(', ');
