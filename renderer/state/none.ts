/** The one empty list that stands for what is not there yet: a selector that makes a new one at each look draws without end. */
export const none: readonly never[] = [];
