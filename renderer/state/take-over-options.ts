import { optionsFrom } from '../../core/document/options-from.ts';
import { readDocumentText } from '../../core/document/read-document.ts';
import { Refusal } from '../../core/refusal.ts';
import { texts } from '../texts.ts';
import { chooseDocument } from './choose-document.ts';
import { freeOptionId } from './free-option-id.ts';
import { said } from './said.ts';
import type { Session } from './session.ts';
import { notify, useWorkbench } from './workbench.ts';

/** Options of another document, which the person chooses, become options of this one, each as a difference from this document as it stands. */
export const takeOverOptions = (session: Session): Promise<void> =>
  said(async () => {
    const t = texts.options;
    const file = await chooseDocument(session.host);
    if (!file) return;
    const list = optionsFrom(readDocumentText(file.text), useWorkbench.getState().document?.raw ?? {}, freeOptionId);
    if (list.length === 0) throw new Refusal([{ what: t.noOptions(file.name), mend: t.noOptionsMend }]);
    for (const option of list) await session.edit({ kind: 'addOption', option });
    notify('plain', { what: t.tookOver(list.length, file.name), mend: t.tookOverMend });
  });
