"""Courses of temperature that shared/session and shared/cooling are tested against: scipy's Radau and DOP853 at tolerances far below ours.

The equations are written out here anew from first principles, with a radiator and an oil cooler of constant conductance, so that nothing
is shared but the physics: four bodies, heat in by load, a thermostat with a straight opening, a charge cooler that warms the radiator's air.
Water's heat of boiling: iapws (IF97).
Run: /usr/bin/python3 tests/reference/session.py > tests/reference/session.json   (Debian: python3-scipy, python3-iapws)
"""
import json
import platform

import numpy
import scipy
from iapws import IAPWS97
from scipy.integrate import solve_ivp

plant = {
    'metalCapacity': 48e3, 'coolantCapacity': 31e3, 'oilCapacity': 17e3, 'coreCapacity': 7.2e3, 'toCoolant': 3800.0, 'radiator': 1150.0, 'oil': 520.0, 'core': 1400.0, 'charge': 340.0,
    'coverage': 0.7, 'airRate': 2100.0, 'outside': 303.15, 'opens': 355.15, 'open': 368.15, 'oilOpens': 353.15,
}
pieces = [(20.0, 68e3, 26e3, 430.0), (12.0, 9e3, 4e3, 310.0), (31.0, 52e3, 19e3, 400.0), (7.0, 0.0, 0.0, 303.15)]
start = [355.15, 355.15, 353.15, 303.15]


def rates(y, heat, oil_heat, hot):
    p = plant
    metal, coolant, oil, core = y
    to_coolant = p['toCoolant'] * (metal - coolant)
    from_core = p['core'] * (core - p['outside'])
    air_in = p['outside'] + p['coverage'] * from_core / p['airRate']
    share = min(1.0, max(0.0, (coolant - p['opens']) / (p['open'] - p['opens'])))
    radiator = share * p['radiator'] * (coolant - air_in)
    oil_out = p['oil'] * min(1.0, max(0.0, (oil - p['oilOpens']) / 10.0)) * (oil - p['outside'])
    return [(heat - to_coolant) / p['metalCapacity'], (to_coolant - radiator) / p['coolantCapacity'], (oil_heat - oil_out) / p['oilCapacity'], (p['charge'] * (hot - core) - from_core) / p['coreCapacity']]


def course(method, laps):
    y, t, rows = start, 0.0, []
    for _ in range(laps):
        for seconds, heat, oil_heat, hot in pieces:
            done = solve_ivp(lambda _, s: rates(s, heat, oil_heat, hot), (0, seconds), y, method=method, rtol=1e-10, atol=1e-9, max_step=0.5)
            y, t = list(done.y[:, -1]), t + seconds
        rows.append({'t': t, 'y': y})
    return rows


if __name__ == '__main__':
    one, other = course('DOP853', 25), course('Radau', 25)
    apart = max(abs(a - b) for r, s in zip(one, other) for a, b in zip(r['y'], s['y']))
    print(json.dumps({
        'versions': {'python': platform.python_version(), 'scipy': scipy.__version__, 'numpy': numpy.__version__}, 'apart': apart,
        'plant': plant, 'pieces': pieces, 'start': start, 'course': one,
        'boilingHeat': [{'celsius': c, 'heat': 1000 * (IAPWS97(T=c + 273.15, x=1).h - IAPWS97(T=c + 273.15, x=0).h)} for c in range(62, 150, 7)],
    }, indent=1))
