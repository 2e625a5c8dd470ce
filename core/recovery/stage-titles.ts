/** Stages of putting a plate down and getting it back, in their order. */
const titles = {
  deck: 'On deck',
  overboard: 'Overboard',
  'splash-down': 'Splash zone, down',
  'splash-down-tilted': 'Splash zone, down, an edge first',
  lower: 'Lowering',
  connect: 'Connecting to the float',
  service: 'In service',
  disconnect: 'Disconnecting',
  haul: 'Hauling',
  'splash-up': 'Splash zone, up, nothing drained',
  'splash-up-half': 'Splash zone, up, half drained',
  'splash-up-drained': 'Splash zone, up, drained',
  'splash-up-tilted': 'Splash zone, up, an edge first',
  'deck-again': 'Onto deck',
} as const;

export type StageId = keyof typeof titles;
export const stageTitles: Readonly<Record<string, string>> & Readonly<Record<StageId, string>> = titles;
