import { emptyRegister, readRegister, type Register } from '../../core/issue/register.ts';
import { openText } from '../host/open-text.ts';
import { access } from 'node:fs/promises';

/** The register that goes with a document: "plate.stillplate" has "plate.register.json" beside it. */
export const registerBeside = (document: string): string =>
  `${document.replace(/\.json$/, '').replace(/\.stillplate$/, '')}.register.json`;

/** Reads a register; where there is none yet, an empty one. Refuses one whose chain was changed. */
export async function openRegister(path: string): Promise<Register> {
  const there = await access(path).then(
    () => true,
    () => false,
  );
  if (!there) return emptyRegister;
  const { text } = await openText(path, {
    is: 'register',
    named: 'a .register.json file',
    largest: 400_000_000,
    tooLarge: 'Check that this is a register of notes.',
  });
  return readRegister(text);
}
