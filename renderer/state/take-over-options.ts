import type { RawOption } from '../../core/document/edit.ts';
import { readDocumentText } from '../../core/document/read-document.ts';
import { Refusal } from '../../core/refusal.ts';
import { texts } from '../texts.ts';
import { chooseDocument } from './choose-document.ts';
import { freeOptionId } from './free-option-id.ts';
import { said } from './said.ts';
import type { Session } from './session.ts';
import { notify } from './workbench.ts';

/** Options of another document, which the person chooses, become options of this one, each as a difference from this document as it stands. */
export const takeOverOptions = (session: Session): Promise<void> =>
  said(async () => {
    const t = texts.options;
    const file = await chooseDocument(session.host);
    if (!file) return;
    const theirs = readDocumentText(file.text)['options'];
    const list = Array.isArray(theirs) ? (theirs as readonly RawOption[]) : [];
    if (list.length === 0) throw new Refusal([{ what: t.noOptions(file.name), mend: t.noOptionsMend }]);
    for (const option of list)
      await session.edit({ kind: 'addOption', option: { ...option, base: null, id: freeOptionId(option.id) } });
    notify('plain', { what: t.tookOver(list.length, file.name), mend: t.tookOverMend });
  });
