/** A step of the first hour. `sheet`: where it is done, as the window knows it; `title` begins with the sheet's name there. */
export interface HourStep {
  readonly sheet?: 'grid' | 'panels' | 'fixings' | 'loads' | 'hydrodynamics' | 'strength' | 'whole' | 'fatigue' | 'durability' | 'recovery' | 'options' | 'note' | 'issue'; // prettier-ignore
  readonly title: string;
  readonly minutes: number;
  readonly act: readonly string[];
  readonly look: string;
  readonly decide?: string;
}

/** From the middle sample to a note, sheet by sheet, in the order of the work. */
export const hour: readonly HourStep[] = [
  {
    title: 'Open the middle sample',
    minutes: 2,
    act: [
      'On the start page choose the second card under “Samples”: a buoy’s plate of 3 main and 7 cross tubes with twelve bays. A copy of your own opens; the sample stays as it is.',
      'In the strip along the bottom choose “As it stands”: 6 mm panels bolted underneath.',
    ],
    look: 'the line across the top. It says what decides, how many lines fail, how many could not be judged, and mass, weight in water and open area. Every edit is kept at once; “Undo” takes any of them back.',
  },
  {
    sheet: 'loads',
    title: 'Loads: what the water does',
    minutes: 8,
    act: [
      'Read the stated force of service: its size, whether it is an amplitude or a range, what it includes, its period and its cycles a year.',
      'Read the cases below it: crossing the surface, lifting out, lift in air, on deck. A case that is not given is not judged.',
      'Change the force to one and a half times its value and press Enter; see the headline move; undo it.',
    ],
    look: 'the words under “What the number means”: a range typed as an amplitude doubles every stress. “Load cases and what balances each” must name a balance for every case.',
    decide:
      'whose force this is, and whether it holds inertia as well as drag. No check can be better than this number.',
  },
  {
    sheet: 'grid',
    title: 'Grid: the tubes as they are',
    minutes: 4,
    act: [
      'Check sections, materials, counts and spacing against the drawing of the plate that exists.',
      'Check whether tubes are flooded and where they vent and drain; then the attachments of the suspension and the pad eyes for lifting.',
    ],
    look: 'the picture: each tube and attachment carries its name. A sealed tube is checked against the pressure outside, a flooded one is not.',
  },
  {
    sheet: 'panels',
    title: 'Panels: close the bays',
    minutes: 8,
    act: [
      'Click bays in the plan, or type a range such as A1:B6, and choose what closes them.',
      'Set the thickness to 8 mm and watch mass and utilisation; undo it.',
      'Try the panel on the other side of the tubes, and a smaller overlap. Where too little bears, a finding says so.',
    ],
    look: 'the checks below the fields, which are those of the bays chosen, and the count of findings in the headline: findings are about geometry and statements, not about strength.',
    decide:
      'thickness, side and overlap. Thin panels save mass and then fail in deflection or cannot be judged in buckling; thick ones cost the lift.',
  },
  {
    sheet: 'fixings',
    title: 'Fixings: bolts or welds',
    minutes: 6,
    act: [
      'Read size, class, pitch and edge distance, how shear is carried and the friction that is relied on.',
      'Open the line “Slip under reversing shear”: formula, the same with numbers, source, second opinion. The note prints exactly this.',
      'Follow “Theory of this check” there to the page of this book, and come back by “Show it on this plate”.',
    ],
    look: 'slip. A bolt in a clearance hole that slides with every wave works loose, whatever its strength is.',
    decide:
      'bolted, if the panels must come off at sea; welded, if they never will. The sheet Options sets the two side by side.',
  },
  {
    sheet: 'strength',
    title: 'Strength: what holds and what does not',
    minutes: 8,
    act: [
      'Read the limit states one after the other; each leads to the check that governs it.',
      'Choose “failing or not judged”. As it stands, lines of panel buckling remain: by hand it is a bound that can clear a panel but never fail one.',
      'Read the findings: each says what and where, and how to mend it.',
    ],
    look: '“not judged” as hard as “fails”. It is never a pass.',
    decide:
      'either more thickness (the option “8 mm bolted underneath” clears all of it), or the whole plate solved, which judges buckling by its own factor.',
  },
  {
    sheet: 'whole',
    title: 'Whole plate: one structure',
    minutes: 6,
    act: [
      'Wait until contact is settled, then show the deflected shape.',
      'Compare the solver’s values with those by hand in the table below, and ask for what happens with a part lost.',
    ],
    look: 'differences of more than a fifth, and which side is the graver. The mesh’s own error stands beside the values.',
    decide:
      'whether verdicts shall take these forces as well (on the sheet Strength, “Forces of the checks”). Then the graver side governs.',
  },
  {
    sheet: 'fatigue',
    title: 'Fatigue: the life of each detail',
    minutes: 4,
    act: [
      'See how the force swings over the life, which access and consequence each detail has, and what lives shortest.',
    ],
    look: 'the environment: in the sea with cathodic protection, or free to corrode. In the second every small cycle counts in full.',
  },
  {
    sheet: 'hydrodynamics',
    title: 'Hydrodynamics: what closing the gaps gains',
    minutes: 3,
    act: ['Read added mass and drag of the plate as it stands, and the same after each bay is closed.'],
    look: 'the range, not the best value: coefficients of a plate with gaps are uncertain to a factor of two or more without a test.',
  },
  {
    sheet: 'recovery',
    title: 'Deployment and recovery: put it down, get it back',
    minutes: 4,
    act: [
      'Go through rope, float and releases, then the lift stage by stage: hook load, slack, and the sea in which it may be done.',
    ],
    look: 'the lift with bays closed. What stills the plate makes it heavy to pull through the surface.',
  },
  {
    sheet: 'options',
    title: 'Options: choose',
    minutes: 4,
    act: [
      'Read the options side by side, and the plot of mass against utilisation.',
      'Use “Duplicate this option” for an idea of your own: it keeps only what differs.',
      'With “8 mm bolted underneath” shown, press “Choose for the note” if it is not chosen already.',
    ],
    look: 'lines that fail and lines not judged before mass: the lightest option here is not one that passes.',
    decide: 'one option, with a reason that you can tell the engineer who signs.',
  },
  {
    sheet: 'note',
    title: 'Note: print it and read it',
    minutes: 3,
    act: ['Press “Make the draft note”, read its first page as the engineer will, and save it.'],
    look: 'the first page: what decides, limit state by limit state, and what is left to the licensed engineer.',
    decide: 'whether you would sign it. Handing over, comments, issue and signature are on the sheet “Issue and sign”.',
  },
];
