import type { RawOption } from '../../core/document/edit.ts';
import { texts } from '../texts.ts';
import { freeOptionId } from './free-option-id.ts';
import { rawOptions } from './raw-options.ts';
import type { Session } from './session.ts';
import { useWorkbench } from './workbench.ts';

/** An option like the one shown, which is then shown itself: what is changed next differs in it alone. */
export async function duplicateOption(session: Session): Promise<void> {
  const { document } = useWorkbench.getState();
  const option = rawOptions().find(({ id }) => id === document?.option);
  const t = texts.options;
  const made: RawOption = option
    ? { ...option, id: freeOptionId(option.id), title: `${option.title} (${t.copy})` }
    : { id: freeOptionId('option'), title: t.newTitle, base: null, changes: {} };
  await session.edit({ kind: 'addOption', option: made });
  await session.show(made.id);
}
