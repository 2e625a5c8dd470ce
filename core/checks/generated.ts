export const compiled = {};
