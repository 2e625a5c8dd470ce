/** The samples that come with the program, smallest first. */
export const sampleNames = ['small', 'middle', 'large', 'inch', 'tested'] as const;
