import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const watch = pathToFileURL(resolve('tests/build/watch-network.mjs')).href;

/** The environment of a program that is started under the watch, which writes what it sees into `log`. */
export const watchedBy = (log: string): NodeJS.ProcessEnv => ({
  ...process.env,
  STILLPLATE_NETWORK_LOG: log,
  NODE_OPTIONS: [process.env['NODE_OPTIONS'], `--import=${watch}`].filter(Boolean).join(' '),
});

/** What the watch wrote, line by line. */
export const heardBy = (log: string): readonly string[] =>
  existsSync(log) ? readFileSync(log, 'utf8').split('\n').filter(Boolean) : [];

/** What left this machine or could: all but listening at loopback, for which its own address is looked up and nobody asked. */
export const reachedOut = (heard: readonly string[]): readonly string[] =>
  heard.filter((line) => !/^(listen|look up) (127\.0\.0\.1|::1)$/.test(line));
