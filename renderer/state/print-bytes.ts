import { valueOf } from '../../core/host/answer.ts';
import type { Host } from '../../core/host/host.ts';

/** Prints a PDF: by the desktop where it can; else the browser shows it in a tab of its own, which prints. */
export async function printBytes(host: Host, bytes: Uint8Array): Promise<void> {
  if (valueOf(await host.about({})).hasDialogs) return void valueOf(await host.print({ bytes }));
  const file = new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/pdf' });
  window.open(URL.createObjectURL(file), '_blank', 'noopener');
}
