import { texts } from '../texts.ts';
import { chooseDocument } from './choose-document.ts';
import { said } from './said.ts';
import type { Session } from './session.ts';
import { notify } from './workbench.ts';

/** Opens a document's file that the person chooses; says what is wrong in it, or that it cannot be written to. */
export const openFile = (session: Session): Promise<void> =>
  said(async () => {
    const file = await chooseDocument(session.host);
    if (!file) return;
    const { name, faults } = await session.engine.ask('preview', { text: file.text });
    const t = texts.start;
    if (faults.length > 0) notify('loud', { what: t.hasFaults(file.name, faults.length), mend: t.hasFaultsMend });
    if (file.readOnly) notify('plain', { what: t.readOnly(file.name), mend: t.readOnlyMend });
    await session.openText(name || file.name, file.text, file.handle);
  });
