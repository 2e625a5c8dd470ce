// Writes samples/tested.stillplate.json anew, from the middle sample and the sample records.
import { runTypeScript } from './run-typescript.mjs';

await (await runTypeScript('build/make-tested-sample.ts')).makeTestedSample();
