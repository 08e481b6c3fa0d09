"""Values that the formulas of ports, throttle, ducts, plenum and seals are tested against, from general-purpose libraries.

Trochoid arc: scipy.special.ellipe. Port time-area and throttle area: scipy.integrate.quad over drawn shapes. Coupled resonances: numpy.linalg.eigvals.
Pressure before a throttle: the flow equation solved by scipy.optimize.brentq. Bends: fluids.fittings.bend_rounded (Rennels).
Run: python3 tests/reference/breathing.py > tests/reference/breathing.json   (scipy, numpy, fluids)
"""
import json
from math import acos, asin, cos, pi, radians, sqrt

import fluids
import numpy
import scipy
from fluids.fittings import bend_rounded
from scipy.integrate import quad
from scipy.optimize import brentq
from scipy.special import ellipe


def path(radius, e, shift):
    a = radius + 3 * e
    return (4 * a * ellipe(12 * e * radius / a ** 2) + 2 * pi * shift) / 3


def time_area(whole, opens, closes, opening, closing, speed):
    area = lambda t: whole * max(0, min(1, (t - opens) / opening, (closes - t) / closing))
    return quad(area, opens, closes, points=[opens + opening, closes - closing], epsabs=1e-16)[0] / speed


def throttle(bore, shaft, angle, closed):
    r = bore / 2
    b = r * cos(angle) / cos(closed)
    hidden = lambda x: min(sqrt(max(0, r * r - x * x)), max(shaft / 2, b * sqrt(max(0, 1 - x * x / r / r))))
    return pi * r * r - 4 * sum(quad(hidden, r * i / 200, r * (i + 1) / 200, epsabs=1e-15)[0] for i in range(200))


def coupled(c, v1, a1, l1, v2, a2, l2):
    m = numpy.array([[c * c * a1 / l1 * (1 / v1 + 1 / v2), -c * c * a1 / l1 / v2], [-c * c * a2 / l2 / v2, c * c * a2 / l2 / v2]])
    return sorted(float(sqrt(x) / (2 * pi)) for x in numpy.linalg.eigvals(m))


def upstream(flow, area, share, temperature, after):
    g, gas = 1.4, 287.05287

    def passes(before):
        r = max(after / before, (2 / (g + 1)) ** (g / (g - 1)))
        return area * share * before / sqrt(gas * temperature) * r ** (1 / g) * sqrt(2 * g / (g - 1) * (1 - r ** ((g - 1) / g)))

    return brentq(lambda p: passes(p) - flow, after * 1.0000000001, after * 50, xtol=1e-7, rtol=1e-15)


print(json.dumps({
    'scipy': scipy.__version__, 'numpy': numpy.__version__, 'fluids': fluids.__version__,
    'path': [path(.105, .015, s) for s in (0, .003)],
    'timeArea': [time_area(15.84e-4, radians(32), radians(320), radians(o), radians(c), 8000 * pi / 30) for o, c in ((45, 30), (200, 150))],
    'throttle': [throttle(.08, .01, radians(a), radians(6)) for a in (20, 45, 80, 88)],
    'coupled': [coupled(345, 409.197e-6, 16e-4, .3, 2500e-6, 40e-4, .6), coupled(340, 500e-6, 20e-4, .2, 8000e-6, 50e-4, .5)],
    'upstream': [upstream(*row) for row in ((.3, 44e-4, .85, 320, 200e3), (.05, 3e-4, .8, 300, 60e3), (.05, 3e-4, .8, 300, 30e3))],
    'bends': [bend_rounded(Di=.06, bend_diameters=r, angle=a, fd=f, method='Rennels') for r, a, f in ((1.5, 90, .018), (1, 90, .018), (3, 45, .018), (1.5, 60, .03))],
}, indent=1))
