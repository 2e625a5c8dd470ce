import { saveBytes } from '../parts/save-bytes.ts';
import { texts } from '../texts.ts';
import { said } from './said.ts';
import type { Session } from './session.ts';
import { notify, useWorkbench } from './workbench.ts';

/** Writes the document as it is now to a file of the person's choice, beside the store. */
export const saveFile = ({ host, engine }: Session): Promise<void> =>
  said(async () => {
    const { text } = await engine.ask('text', null);
    const name = `${useWorkbench.getState().line?.name ?? 'plate'}.stillplate`;
    await saveBytes(host, name, new TextEncoder().encode(text), 'application/json');
  });

/** A revision of the document and, where it has a file, that file at once; a document that is in no store is saved as a file. */
export async function save(session: Session): Promise<void> {
  if (!useWorkbench.getState().line) return saveFile(session);
  if (!(await session.saveRevision(''))) return;
  const file = useWorkbench.getState().line?.file ?? null;
  notify('plain', { what: texts.session.saved(file), mend: '' });
}
