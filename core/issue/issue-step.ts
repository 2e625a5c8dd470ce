import type { Appraisal } from '../appraise.ts';
import type { RawDocument } from '../document/read-document.ts';
import { programVersion } from '../result.ts';
import type { IssueEvent } from './register.ts';
import { resultSummary } from './result-summary.ts';

type ForCheck = Extract<IssueEvent, { kind: 'issued for check' }>;

/** A step of a note's life as a person takes it: what a revision holds is not typed, but taken from the plate. */
export type IssueStep = Exclude<IssueEvent, ForCheck> | Pick<ForCheck, 'kind' | 'date' | 'by'>;

/** The event that a step leaves in the register. `raw`: the document as it stands, `appraise`: that of the option to be issued. */
export function eventOfStep(step: IssueStep, raw: RawDocument, appraise: () => Appraisal): IssueEvent {
  if (step.kind !== 'issued for check') return step;
  const appraisal = appraise();
  const { view: _view, ...document } = raw;
  return {
    ...step,
    revision: appraisal.model.document.project.revision,
    option: appraisal.optionId,
    documentHash: appraisal.documentHash,
    programVersion,
    document,
    result: resultSummary(appraisal),
  };
}
