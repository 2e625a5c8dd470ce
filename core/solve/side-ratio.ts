/** A ratio that a shape is kept by, to 13 significant digits. The sides of equal fields are differences of places and
 *  differ in their last bits; with those bits each field would be solved anew. Error: 5e-13 of the ratio at most. */
export const sideRatio = (over: number, under: number): number => Number((over / under).toPrecision(13));
