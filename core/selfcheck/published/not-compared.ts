/**
 * Checks that have no value from outside, each with the reason: they set one given number against another. A test holds
 * this list: a new check needs a value in its family beside it, or a line here that says why there is none.
 */
export const notCompared: Readonly<Record<string, string>> = {
  'bolt-hydrogen': 'hardness of a table against a limit of a table: nothing is computed',
  'lift-a-frame': 'hook load, computed stage by stage before the check, against the capacity stated',
  'lift-winch': 'hook load, computed stage by stage before the check, against the capacity stated',
};
