/** What is not judged, in our words; what the program can say of itself by its data stands in `limits.ts` beside this folder. */
export const limitWords = {
  approval: {
    title: 'No approval',
    text: 'The note is for a licensed engineer to review and sign. Local codes, class and port rules and lifting regulations take precedence over anything printed here.',
  },
  loads: {
    title: 'Loads that are taken as stated',
    items: [
      'The force of service is the author’s. It is not derived from a site’s statistics of waves, nor from a recorded motion.',
      'Current, vortex shedding, ice, dropped objects, trawls, collision and earthquake are no load cases.',
      'Marine growth counts in added mass, drag, motion, the service force down and the lift after the deployment; not in drag of a rougher surface.',
    ],
  },
  strength: {
    title: 'Strength that is not judged',
    items: [
      'Cross tubes that lie on main tubes (stacked): strength of the crossings.',
      'Round tubes that cross: fatigue at the toes of their welds.',
      'What welding bends.',
      'Fracture at low temperature, lamellar tearing, wear and fretting under bolts.',
      'Fittings of the suspension, the float’s structure, moorings and whatever the plate hangs from.',
    ],
  },
  water: {
    title: 'Water that is not computed',
    items: [
      'Waves that the plate itself makes: a plate nearer to the surface than its breadth cannot be judged.',
      'Flow along the plate, and its effect on drag across it.',
      'The slam of a plate that meets the surface at an angle other than the one stated.',
    ],
  },
  validation: 'What was and was not proved of the program',
  left: 'Left to the licensed engineer',
  ranges: {
    title: 'When a single check says “cannot be judged”',
    caption: 'Formulas hold in a range; outside it the verdict is open, never a guess',
    check: 'Check',
    outside: 'Cannot be judged where',
  },
} as const;
