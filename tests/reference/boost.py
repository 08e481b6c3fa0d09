"""Values that shared/boost and shared/numerics are tested against, from general-purpose libraries.

Monotone curves: scipy.interpolate.PchipInterpolator, which follows the PCHIP of Fritsch and Butland; data sets RPN 14 of Fritsch and
Carlson, SIAM J. Numer. Anal. 17 (1980) 238, and the one of Akima, J. ACM 17 (1970) 589, both as carried by textbooks.
Compression, choking and relief of gases: fluids (isentropic_T_rise_compression, isentropic_work_compression, API520_A_g, P_critical_flow).
Turbine balance: the two equations solved by scipy.optimize.brentq.
Run: /usr/bin/python3 tests/reference/boost.py > tests/reference/boost.json   (Debian: python3-scipy, python3-fluids)
"""
import json
import platform

import fluids
import numpy
import scipy
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

SETS = {
    'rpn14': ([7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20], [0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994]),
    'akima': ([0, 2, 3, 5, 6, 8, 9, 11, 12, 14, 15], [10, 10, 10, 10, 10, 10, 10.5, 15, 50, 60, 85]),
    'hill': ([0, 1, 2.5, 4, 4.5], [0.62, 0.71, 0.76, 0.7, 0.4]),
    'three': ([0, 1, 3], [0, 2, 2.5]),
    'turn': ([0, 1, 2], [0, 1, -5]),
    'late': ([0, 1, 2, 3], [0, 0.1, 5, 5.1]),
}


def curves():
    rows = []
    for name, (x, y) in SETS.items():
        curve = PchipInterpolator(x, y)
        at = [float(v) for v in numpy.linspace(x[0], x[-1], 23)]
        rows.append({'name': name, 'x': x, 'y': y, 'at': at, 'value': [float(curve(v)) for v in at],
                     'slope': [float(curve.derivative()(v)) for v in at], 'slopes': [float(curve.derivative()(v)) for v in x]})
    return rows


def balance(power, p4, t3, capacity, eta, cp, k):
    def flow(p3):
        return capacity / 101325 * (288.15 / t3) ** 0.5 * (p3 * p3 - p4 * p4) ** 0.5

    p3 = brentq(lambda p: flow(p) * cp * t3 * eta * (1 - (p / p4) ** ((1 - k) / k)) - power, p4 * 1.0000001, p4 * 20, xtol=1e-6, rtol=1e-14)
    return {'power': power, 'outletPressure': p4, 'inletTemperature': t3, 'flowCapacity': capacity, 'efficiency': eta, 'specificHeat': cp, 'heatRatio': k,
            'inletPressure': p3, 'flow': flow(p3)}


print(json.dumps({
    'python': platform.python_version(), 'scipy': scipy.__version__, 'numpy': numpy.__version__, 'fluids': fluids.__version__,
    'curves': curves(),
    'compression': [{'t1': t, 'ratio': r, 'eta': e, 't2': t + fluids.isentropic_T_rise_compression(t, 1e5, r * 1e5, 1.4, e) - t,
                     'workPerMole': fluids.isentropic_work_compression(t, 1.4, P1=1e5, P2=r * 1e5, eta=e)} for t, r, e in [(298.15, 2, 0.74), (308.15, 2.6, 0.7), (286.8, 8, 1), (273.15, 1.4, 0.62)]],
    'critical': [{'k': k, 'ratio': fluids.P_critical_flow(1.0, k)} for k in (1.2, 1.3, 1.35, 1.4)],
    'relief': [{'p1': p1, 'p2': p2, 'k': k, 'flux': 1 / fluids.API520_A_g(m=1.0, T=t, Z=1.0, MW=mw, k=k, P1=p1, P2=p2, Kd=0.7, Kb=1, Kc=1)}
               for p1, p2, t, mw, k in [(270e3, 130e3, 1200, 28.0, 1.32), (200e3, 140e3, 1150, 28.0, 1.32), (150e3, 125e3, 1100, 28.96, 1.35), (400e3, 101325, 1250, 28.96, 1.4)]],
    'balance': [balance(*row) for row in [(27427.7, 101325, 1173.15, 0.25, 0.7, 1150, 1.33), (32000, 132e3, 1210, 0.21, 0.55, 1330, 1.287), (500, 102e3, 1000, 0.21, 0.55, 1270, 1.3), (60000, 150e3, 1250, 0.35, 0.65, 1340, 1.285)]],
}, indent=1))
