/** A utilisation with two places; one that they would print as nothing, of long lives in fatigue, as “<0.01”. */
export const utilisationText = (use: number): string => (use > 0 && use < 0.005 ? '<0.01' : use.toFixed(2));
