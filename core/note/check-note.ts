import canonicalize from 'canonicalize';
import { utf8ToBytes } from '@noble/hashes/utils.js';
import { arithmetic } from '../arithmetic.ts';
import type { Appraisal } from '../appraise.ts';
import type { RawDocument } from '../document/read-document.ts';
import type { Comparison } from '../options/compare.ts';
import { programVersion, resultOf } from '../result.ts';
import { againstSection } from './against-section.ts';
import { boltedAgainstWelded } from '../options/bolted-against-welded.ts';
import { bothForcesSection } from './both-forces-section.ts';
import { checkSections } from './check-sections.ts';
import { cautionSection, signOffSection, sourceSection } from './closing-sections.ts';
import { comparisonSection } from './comparison-section.ts';
import { drawingSection } from './drawing-section.ts';
import { deferredSection } from './deferred-section.ts';
import { durabilitySection } from './durability-section.ts';
import { recoverySection } from './recovery-section.ts';
import { closingSection } from './closing-section.ts';
import { hydrodynamicsSection } from './hydrodynamics-section.ts';
import { fatigueSection } from './fatigue-section.ts';
import { firstPage } from './first-page.ts';
import { assumptionSection, inputSection } from './input-sections.ts';
import { loadSection } from './load-section.ts';
import { massSection } from './mass-section.ts';
import { deploymentsSection } from './deployments-section.ts';
import { motionSection } from './motion-section.ts';
import { testsSection } from './tests-section.ts';
import type { Model } from '../model.ts';
import { searchSection } from './search-section.ts';
import { sensitivitySection } from './sensitivity-section.ts';
import type { Note } from './note.ts';
import { emptyRegister, type Register } from '../issue/register.ts';
import { resultSummary } from '../issue/result-summary.ts';
import { printIn } from '../print-in.ts';
import { notePlace, revisionSection, stampOf } from './revision-section.ts';

/**
 * The check note of one option, as a tree. Reads no clock: its date is the revision's. `file`: the very bytes that the
 * document was read from, which are attached as they are; without them (a document that was edited and not yet
 * written) its JSON is, without the window's state. `register`: what was issued before, and whether this content was.
 */
export function checkNote(
  raw: RawDocument,
  appraisal: Appraisal,
  comparison: Comparison,
  file?: Uint8Array,
  register: Register = emptyRegister,
): Note {
  const { model, optionTitle } = appraisal;
  const place = notePlace(register, appraisal.documentHash, appraisal.optionId);
  const { project, paper, units } = model.document;
  const print = printIn(units);
  const closing = closingSection(model, print);
  const motionLeft = model.document.hydrodynamics?.system ? motionSection(model, print) : null;
  const titleBlock = [
    ['Project', project.name],
    ['Number', project.number],
    ['Client', project.client],
    ['Vessel', project.vessel],
    ['Site', project.site],
    ['Subject', project.subject],
    ['Option', optionTitle],
    ['Design basis', model.basis.title],
    ['Load', loadLine(model)],
    ['Revision', `${project.revision}, ${project.date}`],
  ] as const;
  return {
    title: `Check note: ${project.name}`,
    stamp: stampOf(place),
    paper,
    titleBlock: titleBlock.flatMap(([label, value]) => (value === undefined ? [] : [[label, value] as const])),
    documentHash: appraisal.documentHash,
    programVersion,
    date: project.date,
    language: 'en-GB',
    sections: [
      firstPage(appraisal, print),
      assumptionSection(model, print),
      inputSection(model, print),
      drawingSection(model),
      massSection(model, print),
      loadSection(model, print),
      hydrodynamicsSection(model, print),
      ...(closing ? [closing] : []),
      ...(motionLeft ? [motionLeft] : []),
      ...testsSection(model, print),
      ...deploymentsSection(model, print),
      fatigueSection(model, appraisal.rows, print),
      durabilitySection(model, appraisal.rows, print),
      recoverySection(model, appraisal.rows, print),
      ...checkSections(appraisal),
      ...bothForcesSection(appraisal, print),
      comparisonSection(comparison, print),
      ...sensitivitySection(raw, model, appraisal.optionId),
      ...searchSection(raw, model, print),
      // Who gives rates wants the page; without them most of it says what is missing.
      ...(model.document.rates ? [againstSection(boltedAgainstWelded(raw, appraisal.optionId), print)] : []),
      cautionSection(appraisal),
      sourceSection(appraisal),
      revisionSection(place, {
        raw,
        result: resultSummary(appraisal),
        revision: project.revision,
        date: project.date,
      }),
      deferredSection(appraisal),
      signOffSection(place),
    ],
    attachments: [
      {
        name: 'document.stillplate.json',
        description: 'The document that this note was computed from',
        mime: 'application/json',
        bytes: file ?? jsonOf(raw),
        relationship: 'Source',
      },
      {
        name: 'result.json',
        description: 'Every quantity and check of this option, SI',
        mime: 'application/json',
        bytes: utf8ToBytes(canonicalize(resultOf(appraisal, { every: true })) as string),
        relationship: 'Data',
      },
      {
        name: 'note.json',
        description: 'How this note was made, and the register of what was issued: read by “verify”',
        mime: 'application/json',
        bytes: utf8ToBytes(canonicalize(madeOf(appraisal, register)) as string),
        relationship: 'Supplement',
      },
    ],
  };
}

/** What, beside the document, decides every byte of a note. */
export interface NoteMade {
  readonly schema: 'stillplate-note/1';
  readonly programVersion: string;
  /** Of the machine that worked it out: `arithmetic` of core. */
  readonly arithmetic: string;
  readonly option: string | null;
  /** With forces of the whole plate. */
  readonly solver: boolean;
  readonly register: Register;
}

const madeOf = ({ optionId, model: { solved } }: Appraisal, register: Register): NoteMade => ({
  schema: 'stillplate-note/1',
  programVersion,
  arithmetic: arithmetic(),
  option: optionId,
  solver: solved !== null && !('missing' in solved),
  register,
});

function jsonOf({ view: _view, ...content }: RawDocument): Uint8Array {
  return utf8ToBytes(`${JSON.stringify(content, null, 2)}\n`);
}

/** The stated load in one line, for the title block: nothing in it may be taken for granted. */
function loadLine({ document }: Model): string {
  const { force, measure, level, returnPeriod, includes } = document.loads.service;
  return `${force.typed}, ${measure}, ${level}, return period ${returnPeriod.typed}; includes ${includes.join(', ')}`;
}
