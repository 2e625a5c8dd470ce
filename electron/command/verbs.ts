import { catalogueVerb } from './catalogue.ts';
import { checkVerb } from './check.ts';
import { compareVerb } from './compare.ts';
import { durabilityVerb } from './durability.ts';
import { fatigueVerb } from './fatigue.ts';
import { issueVerb } from './issue.ts';
import { motionVerb } from './motion.ts';
import { fabricateVerb } from './fabricate.ts';
import { handbookVerb } from './handbook.ts';
import { newVerb } from './new.ts';
import { noteVerb } from './note.ts';
import { panelVerb } from './panel.ts';
import { recoveryVerb } from './recovery.ts';
import { seaVerb } from './sea.ts';
import { searchVerb } from './search.ts';
import { sensitivityVerb } from './sensitivity.ts';
import { solveVerb } from './solve.ts';
import { tankVerb } from './tank.ts';
import { selfcheckVerb } from './selfcheck.ts';
import { signVerb } from './sign.ts';
import type { Terminal } from './terminal.ts';
import { validateVerb } from './validate.ts';
import { verifyVerb } from './verify.ts';
import { waterVerb } from './water.ts';

export interface Verb {
  /** How it is called, one line. */
  readonly usage: string;
  /** What it is for, one line. */
  readonly purpose: string;
  /** What its options mean, and an example to copy. */
  readonly help: string;
  readonly run: (args: readonly string[], on: Terminal) => Promise<number>;
}

/** The commands, in the order in which a person meets them. */
export const verbs: Readonly<Record<string, Verb>> = {
  new: newVerb,
  validate: validateVerb,
  check: checkVerb,
  compare: compareVerb,
  note: noteVerb,
  issue: issueVerb,
  sign: signVerb,
  verify: verifyVerb,
  fabricate: fabricateVerb,
  catalogue: catalogueVerb,
  panel: panelVerb,
  search: searchVerb,
  sensitivity: sensitivityVerb,
  solve: solveVerb,
  water: waterVerb,
  fatigue: fatigueVerb,
  durability: durabilityVerb,
  tank: tankVerb,
  motion: motionVerb,
  sea: seaVerb,
  recovery: recoveryVerb,
  selfcheck: selfcheckVerb,
  handbook: handbookVerb,
};
