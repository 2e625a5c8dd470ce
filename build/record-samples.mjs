// Writes what the samples give now into their expected files. Numbers that moved belong into CHANGELOG.md, with the reason.
import { runTypeScript } from './run-typescript.mjs';

await (await runTypeScript('build/record-samples.ts')).record();
