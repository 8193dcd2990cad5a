"""The algorithm of ranking.bench.ts in numpy: the same model, draws, comparison and scheme; other random numbers.

python3 tests/benchmarks/ranking.py ENTRIES CATEGORIES DRAWS  ->  one line of JSON
"""

import json
import resource
import sys
import time

import numpy as np


def errors_of(values, own, degrees, rig, rig_sd, draws, effects, rng):
    return own * rng.standard_t(degrees, (draws, len(values))) + values * rig_sd * effects[:, rig]


def uncertainty_of_differences(values, own, rig, rig_sd):
    loads = np.zeros((len(values), rig.max() + 1))
    loads[np.arange(len(values)), rig] = values * rig_sd
    shared = ((loads[:, None, :] - loads[None, :, :]) ** 2).sum(axis=2)
    s = np.sqrt(own[:, None] ** 2 + own[None, :] ** 2 + shared)
    np.fill_diagonal(s, np.inf)
    return s


def critical_value(errors, s, still_open, level):
    largest = np.zeros(len(errors))
    for i in range(s.shape[0]):
        others = np.flatnonzero(still_open[i])
        if len(others):
            t = (errors[:, [i]] - errors[:, others]) / s[i, others]
            np.maximum(largest, t.max(axis=1), out=largest)
    return np.sort(largest)[int(np.ceil(level * (len(errors) + 1))) - 1]


def place_sets(values, errors, s, level=0.95):
    n = len(values)
    ahead = np.zeros((n, n), bool)
    still_open = np.isfinite(s)
    t = (values[:, None] - values[None, :]) / s
    while True:
        told = still_open & (t > critical_value(errors, s, still_open, level))
        if not told.any():
            return 1 + ahead.sum(axis=0), n - ahead.sum(axis=1)
        ahead |= told
        still_open &= ~told


def places_of(goodness):
    order = np.argsort(-goodness, axis=1)
    places = np.empty_like(order)
    np.put_along_axis(places, order, np.arange(1, goodness.shape[1] + 1)[None, :], axis=1)
    return places


def main(entries, categories, draws):
    rng = np.random.default_rng(1)
    rig = np.arange(entries) % 4
    started = time.process_time()
    effects = rng.standard_normal((draws, 4))
    scores = np.zeros((draws, entries))
    point = np.zeros(entries)
    for _ in range(categories):
        values = 100 * (1 + 0.05 * rng.standard_normal(entries))
        own = 0.05 * values / np.sqrt(10)
        errors = errors_of(values, own, 15, rig, 0.01, draws, effects, rng)
        place_sets(values, errors, uncertainty_of_differences(values, own, rig, 0.01))
        scores += places_of(values + errors)
        point += places_of(values[None, :])[0]
    deviations = scores.mean(axis=0) - scores
    covariance = np.cov(deviations[:2000].T)
    spread = np.diag(covariance)
    s = np.sqrt(np.maximum(spread[:, None] + spread[None, :] - 2 * covariance, 1e-12))
    np.fill_diagonal(s, np.inf)
    place_sets(-point, deviations, s)
    seconds = time.process_time() - started
    megabytes = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(json.dumps({"entries": entries, "seconds": seconds, "megabytes": megabytes}))


if __name__ == "__main__":
    main(*(int(argument) for argument in sys.argv[1:4]))
