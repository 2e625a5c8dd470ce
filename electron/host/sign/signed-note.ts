import type { Gives, Takes } from '../../../core/host/host.ts';

/** A note signed for the window, as `stillplate sign` signs it. What signing needs is loaded when it is asked for. */
export async function signedNote({ bytes, certificate, password, role, at, reason, timeStampAt, seal }: Takes<'signNote'>): Promise<Gives<'signNote'>> {
  const [{ openIdentity }, { nameOf }, { signNote }] = await Promise.all([import('./open-identity.ts'), import('./name-of.ts'), import('./sign-note.ts')]); // prettier-ignore
  const identity = openIdentity(certificate, password);
  // A message from a local server comes as Node's buffer, which the reader of PDFs refuses.
  const plain = new Uint8Array(bytes);
  const signed = await signNote(plain, { identity, role, at: new Date(at), ...(reason === null ? {} : { reason }), ...(timeStampAt === null ? {} : { timeStampAt }), ...(seal === null ? {} : { seal: new Uint8Array(seal) }) });
  return { bytes: signed, signer: nameOf(identity.certificates[0]!.subject) };
} // prettier-ignore
