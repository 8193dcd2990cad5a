"""The algorithm of ranking.bench.ts in numpy: the same model, grid, draws, comparison and scheme; other random numbers.

python3 tests/benchmarks/ranking.py ENTRIES CATEGORIES DRAWS  ->  one line of JSON
"""

import json
import resource
import sys
import time

import numpy as np

RIGS, TESTERS, SPECIMENS, CV = 3, 5, 8, 0.031
COARSE = np.array([0, 0.1, 0.2, 0.35, 0.55, 0.8, 1.15, 1.65, 2.5, 4])
SCALE = {"submission": 0.02, "rig": 0.015, "tester": 0.015}
NONE = {"submission": 0.2, "rig": 0.4, "tester": 0.4}


def measured(n, rng):
    truth = 100 * (1 + 0.05 * rng.standard_normal(n))
    rig, tester = rng.integers(RIGS, size=(n, 2)), (rng.integers(TESTERS, size=(n, 1)) + [[0, 1]]) % TESTERS
    effect = 0.01 * rng.standard_normal(RIGS)[rig] + 0.01 * rng.standard_normal(TESTERS)[tester]
    means = truth[:, None] * (1 + effect + CV * rng.standard_normal((n, 2)) / np.sqrt(SPECIMENS))
    columns = np.zeros((n, 2, RIGS + TESTERS))
    np.put_along_axis(columns, rig[:, :, None], 1, axis=2)
    np.put_along_axis(columns, RIGS + tester[:, :, None], 1, axis=2)
    return means, columns, np.full((n, 2), CV**2 / SPECIMENS), 14 * n


def level_of(y, columns, v, submission):
    """What a submission spread leaves: shares, means, mean loads, and M, q of the within-variant contrasts."""
    w = 1 / (submission**2 + v)
    total = w.sum(axis=1)
    shares = w / total[:, None]
    loads = np.einsum("is,isc->ic", shares, columns)
    means = (shares * y).sum(axis=1)
    centred = columns - loads[:, None, :]
    rest = y - means[:, None]
    m = np.einsum("is,isc,isd->cd", w, centred, centred)
    q = np.einsum("is,isc,is->c", w, centred, rest)
    logs = -np.log(w).sum() + np.log(total).sum()
    return shares, means, loads, m, q, logs + (w * rest**2).sum(), 1 / total


def weights_of(levels, axes):
    """Likelihood x prior x cell width over the grid, normalised."""
    rig, tester = np.meshgrid(axes["rig"], axes["tester"], indexing="ij")
    sds = np.concatenate([np.repeat(rig.reshape(-1, 1), RIGS, axis=1), np.repeat(tester.reshape(-1, 1), TESTERS, axis=1)], axis=1)
    logs = []
    for _, _, _, m, q, constant, _ in levels:
        lower = np.linalg.cholesky(np.eye(RIGS + TESTERS) + sds[:, :, None] * m * sds[:, None, :])
        explained = np.linalg.solve(lower, (sds * q)[:, :, None])[:, :, 0]
        determinant = 2 * np.log(np.diagonal(lower, axis1=1, axis2=2)).sum(axis=1)
        logs.append(-0.5 * (constant + determinant - (explained**2).sum(axis=1)))
    log = np.array(logs).reshape(len(levels), *rig.shape)
    for at, cause in enumerate(("submission", "rig", "tester")):
        axis = axes[cause]
        width = (np.append(axis[1:], axis[-1]) - np.append(axis[0], axis[:-1])) / 2
        width = width + (axis == 0) * NONE[cause] / (1 - NONE[cause]) * SCALE[cause] * 4 / 3
        prior = -2.5 * np.log1p((axis / SCALE[cause]) ** 2 / 4) + np.log(width)
        log = log + prior.reshape([-1 if at == k else 1 for k in range(3)])
    weight = np.exp(log - log.max())
    return weight / weight.sum()


def fine_axis(mass, axis):
    total = np.cumsum(mass)
    low, high = np.searchsorted(total, 0.002), len(axis) - 1 - np.searchsorted(np.cumsum(mass[::-1]), 0.002)
    return np.linspace(axis[max(0, low - 1)], axis[min(len(axis) - 1, high + 1)], 10)


def fitted(y, columns, v):
    axes = {cause: COARSE * scale for cause, scale in SCALE.items()}
    weight = weights_of([level_of(y, columns, v, s) for s in axes["submission"]], axes)
    axes = {
        cause: fine_axis(weight.sum(axis=tuple({0, 1, 2} - {at})), axes[cause]) for at, cause in enumerate(("submission", "rig", "tester"))
    }
    levels = [level_of(y, columns, v, s) for s in axes["submission"]]
    cumulated = np.cumsum(weights_of(levels, axes))
    drawn = np.searchsorted(cumulated, (np.arange(200) + 0.5) / 200)
    atoms = []
    for cell, count in zip(*np.unique(np.minimum(drawn, 999), return_counts=True)):
        a, b, c = np.unravel_index(cell, (10, 10, 10))
        shares, means, loads, m, q, _, own = levels[a]
        sds = np.repeat([axes["rig"][b], axes["tester"][c]], [RIGS, TESTERS])
        inner = np.linalg.inv(np.eye(RIGS + TESTERS) + sds[:, None] * m * sds[None, :])
        covariance = sds[:, None] * inner * sds[None, :]
        factor = np.linalg.cholesky(covariance + 1e-18 * np.eye(RIGS + TESTERS))
        atoms.append((count / 200, own, (shares**4 * v**2).sum(axis=1), means - loads @ (covariance @ q), loads @ factor))
    return atoms


def tails_of(atoms, centre, degrees):
    n = len(centre)
    variance, fourth, welch = np.zeros((n, n)), np.zeros((n, n)), np.zeros((n, n))
    for share, own, squares, mean, loads in atoms:
        gram = loads @ loads.T
        shared = np.diag(gram)[:, None] + np.diag(gram)[None, :] - 2 * gram
        v = own[:, None] + own[None, :] + shared
        shift = (mean - centre)[:, None] - (mean - centre)[None, :]
        variance += share * (v + shift**2)
        fourth += share * (3 * v**2 + 6 * v * shift**2 + shift**4)
        welch += share * (squares[:, None] + squares[None, :]) / degrees
    excess = np.maximum(0, fourth - 3 * variance**2) / variance**2
    with np.errstate(divide="ignore"):
        mixture = 4 + 6 / excess
        scale = np.where(excess == 0, 1, (mixture - 2) / mixture)
        s = np.sqrt(variance * scale)
        degrees = 1 / (np.where(excess == 0, 0, 1 / mixture) + welch / variance**2)
    np.fill_diagonal(s, np.inf)
    return s, degrees


def drawn_errors(atoms, centre, degrees, draws, rng):
    owner = rng.choice(len(atoms), size=draws, p=[share for share, *_ in atoms])
    errors = np.empty((draws, len(centre)))
    for at, (_, own, _, mean, loads) in enumerate(atoms):
        rows = np.flatnonzero(owner == at)
        t = rng.standard_t(degrees, (len(rows), len(centre)))
        errors[rows] = mean - centre + np.sqrt(own) * t - rng.standard_normal((len(rows), loads.shape[1])) @ loads.T
    return errors


def normal_score(t, degrees):
    z = (8 * degrees + 1) / (8 * degrees + 3) * np.sqrt(degrees * np.log1p(t * t / degrees))
    return np.where(t < 0, -z, z)


def quantile(drawn, level):
    return np.sort(drawn)[min(len(drawn), int(np.ceil(level * (len(drawn) + 1)))) - 1]


def sizes_up_to(m):
    sizes = [2]
    while sizes[-1] < m:
        sizes.append(min(m, max(sizes[-1] + 1, int(1.1 * sizes[-1]))))
    return sizes


def tile_of(a, size, first, m):
    """The run of neighbours that a position lies in; one that no run holds is alone."""
    start = first + (a - first) // size * size
    return (start, start + size) if start >= first and (start - first) // size < m // size else (a, a + 1)


def largest_in_tiles(errors, s, degrees, sizes, floor):
    """For each draw and size the largest score within runs of so many neighbours, laid from the top or from the bottom in turn."""
    m = errors.shape[1]
    largest = np.full((len(errors), len(sizes)), floor)
    for turn in (0, 1):
        own = errors[turn::2]
        for a in range(m):
            tiles = [tile_of(a, size, turn * (m % size), m) for size in sizes]
            low, high = min(lo for lo, _ in tiles), max(hi for _, hi in tiles)
            t = (own[:, [a]] - own[:, low:high]) / s[a, low:high]
            rows, cols = np.nonzero(t > floor)
            scores = np.zeros_like(t)
            scores[rows, cols] = normal_score(t[rows, cols], degrees[a, low + cols])
            above = np.maximum.accumulate(scores[:, a - low :], axis=1)
            below = np.maximum.accumulate(scores[:, a - low :: -1], axis=1)
            for at, (lo, hi) in enumerate(tiles):
                found = np.maximum(above[:, hi - 1 - a], below[:, a - lo])
                np.maximum(largest[turn::2, at], found, out=largest[turn::2, at])
    return largest


def critical_scores(errors, s, degrees, order, level):
    """Ryan's and Welsch's shares of the error rate; no score below that of the smallest groups decides, so it is looked for first."""
    m, e = len(order), errors[:, order]
    s, degrees = s[np.ix_(order, order)], degrees[np.ix_(order, order)]
    sizes = sizes_up_to(m)

    shares = [level ** (m // size * size / m) for size in sizes]
    scores = [quantile(largest_in_tiles(e, s, degrees, sizes[:1], 0.0)[:, 0], shares[0])]
    if m > 2:
        largest = largest_in_tiles(e, s, degrees, sizes[1:], scores[0])
        scores += [quantile(largest[:, at], share) for at, share in enumerate(shares[1:])]
    return sizes, np.maximum.accumulate(scores)


def needed(z, told, sizes, scores):
    """What each pair must pass: the score of the largest group of equals that could hold both."""
    result = np.full(z.shape, scores[0])
    undecided = np.ones(z.shape, bool)
    for at in range(len(sizes) - 1, 0, -1):
        near = ((np.abs(z) <= scores[at]) & ~told).astype(float)
        decided = undecided & (z <= scores[at]) & (near @ near > sizes[at - 1])
        result[decided] = scores[at]
        undecided &= ~decided
    return result


def place_sets(values, errors, s, degrees, level=0.95):
    n = len(values)
    ahead = np.zeros((n, n), bool)
    pairs = np.isfinite(s)
    z = np.where(pairs, normal_score((values[:, None] - values[None, :]) / s, degrees), 0)
    best, members = np.argsort(-values, kind="stable"), None
    while True:
        told = ahead | ahead.T
        left = [i for i in best if (pairs[i] & ~told[i]).any()]
        if not left:
            return ahead, z
        if members is None or len(left) < members:
            members, (sizes, scores) = len(left), critical_scores(errors, s, degrees, left, level)
        found = pairs & ~told & (z > 0) & (z > needed(z, told, sizes, scores))
        before = ahead.sum()
        ahead |= found
        for k in range(n):
            ahead |= ahead[:, [k]] & ahead[[k], :]
        if ahead.sum() == before:
            return ahead, z


def could_be_first(values, errors, s, degrees, z, level=0.95, beta=0.005):
    could = z.max(axis=0) <= 1.695
    for i in np.flatnonzero(~could & (z.max(axis=0) < 5)):
        mine = np.delete(np.arange(len(values)), i)
        t = (errors[:, mine] - errors[:, [i]]) / s[i, mine]
        farthest = quantile(normal_score(-t, degrees[i, mine]).max(axis=1), 1 - beta)
        scaled = farthest * (8 * degrees[i, mine] + 3) / (8 * degrees[i, mine] + 1)
        bound = values[mine] - values[i] + s[i, mine] * np.sqrt(degrees[i, mine] * np.expm1(scaled**2 / degrees[i, mine]))
        rivals = normal_score(t + np.minimum(0, bound) / s[i, mine], degrees[i, mine]).max(axis=1)
        could[i] = z[:, i].max() <= quantile(rivals, level + beta)
    return could


def places_of(goodness):
    order = np.argsort(-goodness, axis=1)
    places = np.empty_like(order)
    np.put_along_axis(places, order, np.arange(1, goodness.shape[1] + 1)[None, :], axis=1)
    return places


def main(entries, categories, draws):
    rng = np.random.default_rng(1)
    started = time.process_time()
    scores, point = np.zeros((draws, entries)), np.zeros(entries)
    for _ in range(categories):
        means, columns, v, degrees = measured(entries, rng)
        centre = means.mean(axis=1)
        atoms = fitted(means / centre[:, None] - 1, columns, v)
        shift = sum(share * mean for share, _, _, mean, _ in atoms)
        values = np.log(centre * (1 + shift))
        s, nu = tails_of(atoms, shift, degrees)
        errors = drawn_errors(atoms, shift, degrees, draws, rng)
        _, z = place_sets(values, errors, s, nu)
        could_be_first(values, errors, s, nu, z)
        scores += places_of(values + errors)
        point += places_of(values[None, :])[0]
    deviations = scores.mean(axis=0) - scores
    covariance = np.cov(deviations[:2000].T)
    spread = np.diag(covariance)
    s = np.sqrt(np.maximum(spread[:, None] + spread[None, :] - 2 * covariance, 1e-12))
    np.fill_diagonal(s, np.inf)
    place_sets(-point, deviations, s, np.full_like(s, 1e9))
    seconds = time.process_time() - started
    megabytes = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(json.dumps({"entries": entries, "seconds": seconds, "megabytes": megabytes}))


if __name__ == "__main__":
    main(*(int(argument) for argument in sys.argv[1:4]))
