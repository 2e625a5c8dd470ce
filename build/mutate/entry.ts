export { checks } from '../../core/checks/index.ts';
export { collected, firstFailure } from './collected.ts';
export { flippedChanges } from './flipped-changes.ts';
export { mutantsOf } from './mutants.ts';
export { modelsOfText } from './models-of-text.ts';
