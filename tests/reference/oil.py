"""Values that shared/oil is tested against, from general-purpose libraries and an independent solution.

Viscosity index: chemicals.viscosity_index (carries table 1 of ASTM D2270). n-decane: CoolProp.
Journal bearing: Reynolds' equation by finite differences with over-relaxation, pressure never below zero (Swift and Stieber),
so that it shares nothing with the printed tables: eccentricity ratio in, Sommerfeld number and attitude angle out.
Run: python3 -m venv env && env/bin/pip install chemicals==1.5.2 CoolProp==8.0.0 && env/bin/python tests/reference/oil.py > tests/reference/oil.json
"""
import json
import math
import platform

import chemicals
import CoolProp
import numpy as np
from chemicals.viscosity import viscosity_index
from CoolProp.CoolProp import PropsSI


def decane(t):
    return PropsSI('V', 'T', t, 'P', 101325, 'n-Decane') / PropsSI('D', 'T', t, 'P', 101325, 'n-Decane')


def bearing(ratio, e, nt=240, nz=41):
    """Half the bearing, from its middle plane to its open end."""
    theta = np.linspace(0, 2 * math.pi, nt, endpoint=False)
    dt, dz = theta[1], 1 / (nz - 1)
    h = 1 + e * np.cos(theta)
    east, west = ((h + np.roll(h, -1)) / 2) ** 3 / dt ** 2, ((h + np.roll(h, 1)) / 2) ** 3 / dt ** 2
    across = h ** 3 / ratio ** 2 / dz ** 2
    total = east + west + 2 * across
    source = e * np.sin(theta)
    p = np.zeros((nt, nz))
    odd = (np.add.outer(np.arange(nt), np.arange(nz)) % 2).astype(bool)
    relax = 1.9
    for sweep in range(20000):
        before = p.copy()
        for colour in (odd, ~odd):
            north = np.concatenate([p[:, 1:], np.zeros((nt, 1))], axis=1)
            south = np.concatenate([p[:, 1:2], p[:, :-1]], axis=1)
            new = (east[:, None] * np.roll(p, -1, 0) + west[:, None] * np.roll(p, 1, 0) + across[:, None] * (north + south) + source[:, None]) / total[:, None]
            new = np.maximum(0, p + relax * (new - p))
            new[:, -1] = 0
            new[0, :] = 0  # pressure begins at the widest place
            p = np.where(colour, new, p)
        if np.abs(p - before).max() < 1e-11 * max(p.max(), 1e-30):
            break
    weight = np.ones(nz)
    weight[0] = weight[-1] = 0.5
    mean = (p * weight).sum(1) * dz
    radial, tangent = -(mean * np.cos(theta)).sum() * dt, (mean * np.sin(theta)).sum() * dt
    return 1 / (6 * math.pi * math.hypot(radial, tangent)), math.atan2(tangent, radial)


if __name__ == '__main__':
    oils = [(22.83, 5.05), (138.9, 18.1), (30, 4.24), (60, 9.1), (68, 8.6), (91, 14.2), (95, 13.4), (150, 18.5), (165, 15.0), (220, 24.3), (320, 29.0), (460, 72.0)]
    shapes = [(r, e) for r in (0.35, 0.75, 1.5) for e in (0.2, 0.5, 0.7, 0.85)]
    print(json.dumps({
        'versions': {'python': platform.python_version(), 'numpy': np.__version__, 'chemicals': chemicals.__version__, 'CoolProp': CoolProp.__version__},
        'viscosityIndex': [{'at40': a, 'at100': b, 'index': viscosity_index(a * 1e-6, b * 1e-6)} for a, b in oils],
        'decane': [{'kelvin': t, 'viscosity': decane(t)} for t in (313.15, 373.15)],
        'bearing': [dict(zip(('slenderness', 'eccentricity', 'sommerfeld', 'attitude'), (r, e, *bearing(r, e)))) for r, e in shapes],
    }, indent=1))
