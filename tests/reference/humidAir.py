"""Saturation pressure of water and density of moist air by the IAPWS formulations, as the Python library iapws carries them.

Run with Debian's python3-iapws: /usr/bin/python3 tests/reference/humidAir.py > tests/reference/humidAir.json
"""
import json
import platform

import iapws
from iapws import IAPWS97
from iapws.humidAir import HumidAir

MOISTURE = [(288.15, 101325, 0.005), (293.15, 95000, 0.01), (298.15, 101325, 0.02), (300.15, 70000, 0.03), (308.15, 101325, 0.04), (278.15, 85000, 0.004)]

print(json.dumps({
    'made by': f'tests/reference/humidAir.py, Python {platform.python_version()}, iapws {iapws.__version__}',
    'saturation pressure, Pa (IAPWS-IF97, region 4)': {str(t): round(IAPWS97(T=t + 273.15, x=0).P * 1e6, 2) for t in (1, 10, 20, 30, 40, 60, 80, 110, 120)},
    'density of moist air, kg/m3 (IAPWS G8-10)': [
        {'temperature, K': T, 'pressure, Pa': p, 'mole share of vapour': x, 'density': round(HumidAir(T=T, P=p / 1e6, xw=x).rho, 6)} for T, p, x in MOISTURE
    ],
}, indent=1))
