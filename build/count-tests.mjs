// Prints "N passed, N failed" from vitest's JSON report. A test file that could not even be read counts as one failed.
import { readFile } from 'node:fs/promises';

const report = await readFile(process.argv[2], 'utf8').then((text) => (text === '' ? undefined : JSON.parse(text)));
if (!report) console.error('No test has run: an earlier step failed.');
const unread =
  report?.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && !assertionResults.some((test) => test.status === 'failed'),
  ).length ?? 1;
const passed = report?.numPassedTests ?? 0;
const failed = (report?.numFailedTests ?? 0) + unread;
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
