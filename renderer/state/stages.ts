/** The stages of the work, each with its topics, in the order of the work. A later topic adds a name here, its title in `texts.ts` and its sheet in `sheets/sheets.ts`. */
export const stages = [
  { stage: 'plate', topics: ['grid', 'panels', 'fixings', 'catalogue'] },
  { stage: 'water', topics: ['loads', 'hydrodynamics', 'tank', 'sea'] },
  { stage: 'proof', topics: ['strength', 'whole', 'fatigue'] },
  { stage: 'sea', topics: ['durability', 'recovery'] },
  { stage: 'decision', topics: ['search', 'options', 'note', 'issue'] },
] as const;

export type StageName = (typeof stages)[number]['stage'];
export type SheetName = (typeof stages)[number]['topics'][number];

/** All topics in the order of the work. */
export const topics: readonly SheetName[] = stages.flatMap((each) => [...each.topics]);

/** The stage that a topic belongs to. */
export const stageOf = (sheet: SheetName): StageName =>
  stages.find((each) => (each.topics as readonly SheetName[]).includes(sheet))!.stage;
