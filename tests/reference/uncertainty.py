"""Values that shared/uncertainty is tested against, from general-purpose libraries.

Score intervals and their like: scipy.stats.binomtest(...).proportion_ci(method='wilson'). Normal shares: scipy.stats.norm.cdf. Rank correlation with
ties: scipy.stats.spearmanr and rankdata. Quantiles of a triangular and a normal spread: scipy.stats.triang, norm. First numbers of the four
congruential generators: whole numbers of any length, as Python has them. Sums of rectangular and squared normal inputs: numpy, two million samples.
Run: /usr/bin/python3 tests/reference/uncertainty.py > tests/reference/uncertainty.json   (Debian: python3-scipy)
"""
import json
import platform

import numpy
import scipy
from scipy import stats

FACTORS = (11600, 47003, 23000, 33000)
MODULI = (2147483579, 2147483543, 2147483423, 2147483123)


def generator(seed, count):
    term = 1 + seed % 2147483645
    state = []
    for modulus in MODULI:
        term = term * 48271 % 2147483647
        state.append(1 + term % (modulus - 1))
    out = []
    for _ in range(count):
        state = [s * f % m for s, f, m in zip(state, FACTORS, MODULI)]
        out.append(sum(s / m for s, m in zip(state, MODULI)) % 1)
    return out


def intervals():
    rows = []
    for counted, of in [(81, 263), (15, 148), (0, 20), (1, 29), (2000, 2000), (1999, 2000), (137, 500)]:
        ci = stats.binomtest(counted, of).proportion_ci(method='wilson')
        rows.append([counted, of, float(ci.low), float(ci.high)])
    return rows


def ranked():
    r = numpy.random.default_rng(3)
    a = numpy.round(r.normal(size=60), 1)
    b = numpy.round(a ** 3 + r.normal(size=60), 1)
    return {'a': a.tolist(), 'b': b.tolist(), 'ranks': (stats.rankdata(a) - 1).tolist(), 'spearman': float(stats.spearmanr(a, b).statistic)}


def examples():
    r = numpy.random.default_rng(1)
    m = 2_000_000
    root3 = numpy.sqrt(3)
    rect = lambda u: r.uniform(-u * root3, u * root3, m)
    air, weight, of = r.uniform(1.1, 1.3, m), r.uniform(7e3, 9e3, m), r.uniform(7.95e3, 8.05e3, m)
    results = {
        'four-rectangular': rect(1) + rect(1) + rect(1) + rect(1),
        'one-wide': rect(1) + rect(1) + rect(1) + rect(10),
        'mass': (r.normal(1e5, 0.05, m) + r.normal(1.234, 0.02, m)) * (1 + (air - 1.2) * (1 / weight - 1 / of)) - 1e5,
        'loss-10': (r.normal(0.01, 0.005, m) ** 2 + r.normal(0, 0.005, m) ** 2) * 1e6,
    }
    return {name: [float(y.mean()), float(y.std()), *(float(q) for q in numpy.quantile(y, [0.025, 0.975]))] for name, y in results.items()}


print(json.dumps({
    'made': f'Python {platform.python_version()}, numpy {numpy.__version__}, scipy {scipy.__version__}',
    'generator': {str(seed): generator(seed, 2000)[::333] for seed in (1, 2, 123456789)},
    'intervals': intervals(),
    'normal': [[z, float(stats.norm.cdf(z))] for z in (-6, -2.5, -1, -0.3, 0, 0.7, 1.959964, 4)],
    'ranked': ranked(),
    'triangular': [[q, float(stats.triang(0.5, loc=-2, scale=4).ppf(q))] for q in (0.05, 0.25, 0.5, 0.9)],
    'examples': examples(),
}, indent=1))
