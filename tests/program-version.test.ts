import { expect, it } from 'vitest';
import { programVersion } from '../core/result.ts';
import { version } from '../package.json';

it("says package.json's version in results and notes", () => expect(programVersion).toBe(version));
