#!/usr/bin/env node
// Runs the command line on plain Node: the bundle that installing makes, made now if it is absent.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const bundle = new URL('../../build/bundled/command/run.mjs', import.meta.url);
if (!existsSync(fileURLToPath(bundle))) await import('../../build/bundle.mjs');
const { run } = await import(bundle.href);
process.exitCode = await run(process.argv.slice(2));
