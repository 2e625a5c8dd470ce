/** A pressure on each field as a sum of patterns that loadings share, Σ c_k v_k in Pa up, nil on the fields of a panel
 *  that is not there. Kept as that sum: of each panel lost in turn the loadings differ by two numbers. */
export class Pressures {
  readonly terms: readonly (readonly [pattern: Float64Array, times: number])[];
  /** Fields that are not there. */
  readonly without: readonly number[];

  constructor(terms: Pressures['terms'], without: readonly number[] = []) {
    this.terms = terms;
    this.without = without;
  }

  /** Where nothing is shared. */
  static of(net: Float64Array): Pressures {
    return new Pressures([[net, 1]]);
  }

  with(pattern: Float64Array, times: number): Pressures {
    return new Pressures([...this.terms, [pattern, times]], this.without);
  }

  /** As if no field were missing. */
  get whole(): Float64Array {
    const sum = new Float64Array(this.terms[0]![0].length);
    for (const [pattern, times] of this.terms) for (let i = 0; i < sum.length; i++) sum[i]! += times * pattern[i]!;
    return sum;
  }

  get net(): Float64Array {
    const sum = this.whole;
    for (const i of this.without) sum[i] = 0;
    return sum;
  }
}
