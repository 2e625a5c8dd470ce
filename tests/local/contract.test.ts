import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Answer } from '../../core/host/answer.ts';
import { hostOf } from '../../electron/host/host-of.ts';
import { openLocalServer } from '../../electron/local/local-server.ts';
import { contract } from '../host/contract.ts';
import { partsForTests } from '../host/host-parts.ts';
import { cookieOf, pageClient } from './browser-like.ts';

contract('local', async () => {
  const { parts, folder, close } = await partsForTests('local');
  const page = join(folder, 'page');
  await mkdir(page);
  await writeFile(join(page, 'index.html'), '<!doctype html><title>page</title>');
  const server = await openLocalServer({ host: hostOf({ ...parts, dialogs: null }), page });
  const cookie = await cookieOf(server);
  return {
    host: await pageClient(server, cookie),
    reload: () => pageClient(server, cookie),
    close: async () => {
      await server.close();
      await close();
    },
    folder,
    answerDialog: null,
    raw: (host, name, message) => (host[name] as (message: unknown) => Promise<Answer<unknown>>)(message),
  };
});
