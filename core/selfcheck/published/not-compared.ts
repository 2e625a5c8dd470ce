/**
 * Checks that have no value from outside, each with the reason: what they do is a rule of the trade that no source
 * prints, or they set one given number against another. A test holds this list: a new check needs a value in its
 * family beside it, or a line here that says why there is none.
 */
export const notCompared: Readonly<Record<string, string>> = {
  'bolt-anchorage': 'resistances are the maker’s; the straight line between tension and shear is common practice',
  'bolt-access': 'room for a socket, its size by a straight line through sizes remembered: common practice',
  'bolt-hydrogen': 'hardness of a table against a limit of a table: nothing is computed',
  'tube-deflection': 'deflection of the grid of tubes, compared there, against a part of the length: common practice',
  'hanging-stability': 'tilt of the hanging plate, computed by its statics before the check, against 5 degrees: common practice', // prettier-ignore
  'lift-a-frame': 'hook load, computed stage by stage before the check, against the capacity stated',
  'lift-winch': 'hook load, computed stage by stage before the check, against the capacity stated',
  'recovery-float-depth': 'depth against the maker’s rating, or collapse over 1.25: common practice',
  'recovery-release-load': 'steady pull, doubled, against the maker’s rating: common practice',
  'recovery-release-least-pull': 'pull needed, doubled, against what the float leaves: common practice',
  'recovery-release-endurance': 'time in the sea and a quarter of it against the maker’s endurance: common practice',
};
