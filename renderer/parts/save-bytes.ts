import { valueOf } from '../../core/host/answer.ts';
import type { Host } from '../../core/host/host.ts';

/** Saves bytes as a file: through the desktop's dialog where there is one, else as a download of the browser. Gives the name, or null. */
export async function saveBytes(host: Host, name: string, bytes: Uint8Array, mime: string): Promise<string | null> {
  const { hasDialogs } = valueOf(await host.about({}));
  if (hasDialogs) return valueOf(await host.saveFileAs({ name, bytes, mime }))?.name ?? null;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: mime }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
  return name;
}
