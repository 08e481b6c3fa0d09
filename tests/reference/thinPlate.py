"""Values that shared/numerics/thinPlate.ts is tested against: scipy.interpolate.RBFInterpolator, kernel thin_plate_spline, degree 1.

Run: python3 tests/reference/thinPlate.py > tests/reference/thinPlate.json
"""
import json
import platform

import numpy
import scipy
from scipy.interpolate import RBFInterpolator

SETS = {
    'square': [[0, 0, 1], [1, 0, 2], [0, 1, 4], [1, 1, 3], [0.5, 0.4, 0]],
    'hill': [[x / 5, y / 4, 0.76 - (x / 5 - 0.5) ** 2 - 0.4 * (y / 4 - 0.6) ** 2] for x in range(6) for y in range(5)],
    'scattered': [[float(x), float(y), float(v)] for x, y, v in numpy.random.default_rng(7).uniform(-1, 1, (40, 3))],
}
AT = [[0.1, 0.2], [0.5, 0.5], [0.9, 0.3], [1.3, -0.2], [-0.4, 0.7]]


def rows():
    for name, samples in SETS.items():
        s = numpy.array(samples)
        for smoothing in (0, 0.05):
            surface = RBFInterpolator(s[:, :2], s[:, 2], kernel='thin_plate_spline', degree=1, smoothing=smoothing)
            yield {'name': name, 'smoothing': smoothing, 'samples': samples, 'at': AT, 'value': [float(v) for v in surface(numpy.array(AT))]}


print(json.dumps({'versions': {'python': platform.python_version(), 'numpy': numpy.__version__, 'scipy': scipy.__version__}, 'surfaces': list(rows())}, indent=1))
