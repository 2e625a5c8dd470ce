/** On every page of it. */
export const recoveryCautions = [
  'People stand clear of the load, of loaded ropes and of the space below; nobody works under a suspended plate.',
  'Lift plans and divers are for licensed and certified people; local codes, class, port and lifting rules come first.',
  'Releases, floats, lift bags and loaded lines hold stored energy: let it out, or keep away, before anyone touches them.',
] as const;
