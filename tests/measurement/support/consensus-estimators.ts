/** Consensus estimators of the literature that the core does not use; they bracket Mandel and Paule's and DerSimonian and Laird's. */

export interface Consensus {
  readonly mean: number;
  readonly tau2: number;
  readonly se: number;
}

function weighted(y: readonly number[], v: readonly number[], tau2: number) {
  const w = v.map((own) => 1 / (own + tau2));
  const total = w.reduce((sum, one) => sum + one, 0);
  const mean = w.reduce((sum, one, i) => sum + one * y[i]!, 0) / total;
  return { w, total, mean, se: 1 / Math.sqrt(total) };
}

const at = (y: readonly number[], v: readonly number[], tau2: number): Consensus => {
  const { mean, se } = weighted(y, v, tau2);
  return { mean, tau2, se };
};

/** Restricted or plain maximum likelihood by its fixed point (Viechtbauer 2005). */
export function byLikelihood(y: readonly number[], v: readonly number[], isRestricted: boolean): Consensus {
  let tau2 = at(y, v, 0).se ** 2;
  for (let i = 0; i < 20_000; i += 1) {
    const { w, mean, total } = weighted(y, v, tau2);
    const squares = w.reduce((sum, one) => sum + one * one, 0);
    const excess = w.reduce((sum, one, k) => sum + one * one * ((y[k]! - mean) ** 2 - v[k]!), 0);
    tau2 = Math.max(0, excess / squares + (isRestricted ? 1 / total : 0));
  }
  return at(y, v, tau2);
}

/** Hedges and Olkin 1985: the variance of the means less the mean of their variances. */
export function byHedges(y: readonly number[], v: readonly number[]): Consensus {
  const centre = y.reduce((sum, one) => sum + one, 0) / y.length;
  const variance = y.reduce((sum, one) => sum + (one - centre) ** 2, 0) / (y.length - 1);
  return at(y, v, variance - v.reduce((sum, one) => sum + one, 0) / v.length);
}

/** Sidik and Jonkman 2005. */
export function bySidikJonkman(y: readonly number[], v: readonly number[]): Consensus {
  const k = y.length;
  const centre = y.reduce((sum, one) => sum + one, 0) / k;
  const start = y.reduce((sum, one) => sum + (one - centre) ** 2, 0) / k;
  const { w, mean } = weighted(y, v, start);
  return at(y, v, (start * w.reduce((sum, one, i) => sum + one * (y[i]! - mean) ** 2, 0)) / (k - 1));
}

/**
 * Vangel and Rukhin 1999: likelihood of the mean, the variance between groups and each group's own variance, by turns.
 * @param sd standard deviation of each group of n readings
 */
export function byVangelRukhin(means: readonly number[], sd: readonly number[], n: number): { mu: number; se: number; sigma2: number } {
  let tau = sd.map((s) => s ** 2 / n);
  let sigma2 = 0.4;
  let mu = 0;
  for (let i = 0; i < 4000; i += 1) {
    const { w, mean } = weighted(means, tau, sigma2);
    mu = mean;
    const residuals = means.map((one) => (one - mu) ** 2);
    const squares = w.reduce((sum, one) => sum + one * one, 0);
    sigma2 = Math.max(0, w.reduce((sum, one, k) => sum + one * one * (residuals[k]! - tau[k]!), 0) / squares);
    tau = tau.map((_, k) => ownVariance(residuals[k]!, sd[k]! ** 2 / n, n - 1, sigma2));
  }
  return { mu, sigma2, se: weighted(means, tau, sigma2).se };
}

/** The own variance t that is likeliest: the least of ln(σ² + t) + r/(σ² + t) + ν ln t + ν s²/t, by halving its slope. */
function ownVariance(residual: number, observed: number, degreesOfFreedom: number, sigma2: number): number {
  const slope = (t: number) => {
    const all = sigma2 + t;
    return 1 / all - residual / all ** 2 + degreesOfFreedom / t - (degreesOfFreedom * observed) / t ** 2;
  };
  let [low, high] = [observed / 100, 100 * observed];
  for (let i = 0; i < 200; i += 1) {
    const middle = Math.sqrt(low * high);
    if (slope(middle) > 0) high = middle;
    else low = middle;
  }
  return high;
}
