"""Values that shared/cooling and shared/numerics are tested against, from general-purpose libraries.

Water at one atmosphere: iapws (IF97, with the IAPWS releases for viscosity and conductivity), saturated liquid at 100 degC.
Cross flow, both streams unmixed: the closed solution of the two transport equations in Bessel form (Nusselt; Anzelius), by
scipy's adaptive quadrature, so that it shares nothing with a series.
Roots of published test functions: scipy.optimize.brentq.
Run: /usr/bin/python3 tests/reference/cooling.py > tests/reference/cooling.json   (Debian: python3-scipy, python3-iapws)
"""
import json
import math
import platform

import iapws
import numpy
import scipy
from iapws import IAPWS97
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.special import ive


def water():
    rows = []
    for c in range(0, 101, 5):
        w = IAPWS97(T=c + 273.15, x=0) if c == 100 else IAPWS97(T=c + 273.15, P=0.101325)
        rows.append({'celsius': c, 'density': w.rho, 'specificHeat': 1000 * w.cp, 'conductivity': w.k, 'viscosity': w.mu})
    return rows


def cross_unmixed(ntu, cr):
    """One less the mean outlet temperature of the weaker stream, inlets at 1 and 0."""
    def weaker(x, y):
        kernel = lambda s: ive(0, 2 * math.sqrt(s * y)) * math.exp(-(math.sqrt(s) - math.sqrt(y)) ** 2)
        return 1 - quad(kernel, 0, x, epsabs=1e-13, epsrel=1e-13, limit=200)[0]
    return 1 - quad(lambda y: weaker(ntu, y), 0, cr * ntu, epsabs=1e-12, epsrel=1e-12, limit=200)[0] / (cr * ntu)


def roots():
    cases = {
        'x^3 - 2x - 5': (lambda x: x ** 3 - 2 * x - 5, 2, 3),
        'cos x - x': (lambda x: math.cos(x) - x, 0, 1),
        'x exp(x) - 1': (lambda x: x * math.exp(x) - 1, -1, 1),
        'x - tan x': (lambda x: x - math.tan(x), 4, 4.6),
        'exp(-x) - ln x': (lambda x: math.exp(-x) - math.log(x), 0.1, 3),
    }
    return [{'f': name, 'a': a, 'b': b, 'x': brentq(f, a, b, xtol=1e-15)} for name, (f, a, b) in cases.items()]


if __name__ == '__main__':
    grid = [(n, c) for n in (0.25, 0.5, 1, 1.5, 2, 3, 5) for c in (0.25, 0.5, 0.75, 1)]
    print(json.dumps({
        'versions': {'python': platform.python_version(), 'scipy': scipy.__version__, 'numpy': numpy.__version__, 'iapws': iapws.__version__},
        'water': water(),
        'crossUnmixed': [{'ntu': n, 'ratio': c, 'effectiveness': cross_unmixed(n, c)} for n, c in grid],
        'roots': roots(),
    }, indent=1))
