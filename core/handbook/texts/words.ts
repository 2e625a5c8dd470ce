/** Headings and standing words of the handbook; with the files beside it all that a translation needs. */
export const handbookWords = {
  title: 'Handbook',
  subject: 'How the work is done, what each check rests on, and where it ends',
  subjectLabel: 'Subject',
  stamp: 'HANDBOOK',
  date: 'Printed',
  term: 'Word',
  meaning: 'Meaning',
  contents: 'What is in it',
  keys: 'Keys. They stand in the window, which lists them when ? is pressed.',
  hour: {
    title: 'The job in an hour',
    lead: 'From the middle sample to a note for the engineer who signs. Project, vessel and site of the sample are invented. The minutes are for a first time.',
  },
  theory: {
    title: 'Theory of the checks',
    lead: 'Written from the data that the program computes with: the formulas here are the ones that run. A page says when a check is not made, what it takes, how it reckons, what it is held against, and by whose rule.',
  },
  limits: {
    title: 'Limits',
    lead: 'What no number of this program speaks of, and what has to be brought by others.',
  },
  glossary: {
    title: 'Words of the trade',
    lead: 'As they are used in the window, in the note and on these pages.',
  },
  /** First words of the checks' ids. */
  subjects: {
    panel: 'Panels',
    bolt: 'Bolts',
    weld: 'Welds',
    tube: 'Tubes',
    crossing: 'Crossings of tubes',
    eye: 'Eyes',
    suspension: 'Suspension',
    hanging: 'Suspension',
    lift: 'Lift',
    recovery: 'Recovery',
    fatigue: 'Fatigue',
    anode: 'Anodes',
  },
  look: 'Look at:',
  decide: 'Decide:',
  check: {
    limitState: (name: string) => `A check of ${name}.`,
    once: 'Made once at each place: no load enters.',
    everySituation: 'Made at each place for each load case, with the force up and down.',
    detailing: 'A rule on distances, sizes or hardness: kept or broken, no measure of strength.',
    rule: 'A rule can fail it whatever the numbers are; the verdict then says which.',
    solved: (symbols: readonly string[]) =>
      `Judged a second time with the forces of the whole plate where the document asks for it (${symbols.join(', ')}); the graver verdict stands.`,
    notWhere: 'Not made where (as met in the samples):',
    range: 'Cannot be judged where:',
    inputs: 'What it takes',
    symbol: 'Symbol',
    unit: 'Unit',
    meaning: 'Meaning',
    from: 'From',
    judged: 'passes up to 1; demand over capacity',
    utilisation: 'utilisation',
    second: 'Second opinion, which raises a finding where it disagrees:',
    bounds: (of: string, low: string | undefined, high: string | undefined) =>
      low && high
        ? `${of} has to lie between ${low} and ${high}.`
        : low
          ? `${of} has to be ${low} at least.`
          : `${of} has to be ${high} at most.`,
    source: 'Sources:',
    by: { 'partial factors': 'By partial factors', 'allowable stress': 'By allowable stress' },
    under: { 'partial factors': 'under partial factors', 'allowable stress': 'under allowable stress' },
  },
} as const;
