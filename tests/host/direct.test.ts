import type { Answer } from '../../core/host/answer.ts';
import { directHost } from '../../electron/host/direct-host.ts';
import { hostOf } from '../../electron/host/host-of.ts';
import { contract } from './contract.ts';
import { partsForTests } from './host-parts.ts';

contract('direct', async () => {
  const { parts, folder, answerDialog, close } = await partsForTests('direct');
  const behind = hostOf(parts);
  return {
    host: directHost(behind),
    reload: async () => directHost(behind),
    close,
    folder,
    answerDialog,
    raw: (host, name, message) => (host[name] as (message: unknown) => Promise<Answer<unknown>>)(message),
  };
});
