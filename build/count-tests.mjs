// Prints each failed test with its reason, then "N passed, N failed", from vitest's JSON report.
// A test file that could not even be read counts as one failed.
import { readFile } from 'node:fs/promises';
import { relative } from 'node:path';

const report = await readFile(process.argv[2], 'utf8').then((text) => (text === '' ? undefined : JSON.parse(text)));
if (!report) console.error('No test has run: an earlier step failed.');
const failures = (report?.testResults ?? [])
  .filter(({ status }) => status === 'failed')
  .flatMap(({ name, message, assertionResults }) => {
    const file = relative('.', name);
    const tests = assertionResults.filter((test) => test.status === 'failed');
    return tests.length === 0
      ? [`${file}: could not be run: ${message}`]
      : tests.map(({ fullName, failureMessages }) => `${file}: ${fullName}\n  ${failureMessages.join('\n  ')}`);
  });
for (const failure of failures) console.log(`\nFailed: ${failure.slice(0, 1500)}`);
const passed = report?.numPassedTests ?? 0;
const failed = report ? failures.length : 1;
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
