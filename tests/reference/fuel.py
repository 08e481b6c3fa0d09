"""Values that shared/fuel is tested against, from general-purpose libraries.

Friction factors: fluids (Churchill 1977, Colebrook, Haaland, Swamee and Jain 1976, all Darcy).
Pressure loss of a line: fluids.core.dP_from_K with the friction factor of Churchill, for petrol in hoses.
Loss of a sudden widening: fluids.fittings.diffuser_sharp, the square of the difference of areas.
Density of saturated liquid ethanol, isooctane, n-heptane: thermo.
Run: python3 -m pip install fluids==1.3.1 chemicals==1.5.2 thermo==0.6.1
     python3 tests/reference/fuel.py > tests/reference/fuel.json
"""
import json
import math
import platform

import chemicals
import fluids
import thermo
from fluids.core import K_from_f, dP_from_K, Reynolds
from fluids.fittings import diffuser_sharp
from fluids.friction import Churchill_1977, Colebrook, Haaland, Swamee_Jain_1976, friction_laminar


def friction():
    rows = []
    for reynolds in (5e3, 2e4, 7e4, 3e5, 2e6):
        for rough in (0.0, 2e-4, 2e-3, 0.02):
            rows.append({
                'reynolds': reynolds, 'relativeRoughness': rough,
                'churchill': Churchill_1977(reynolds, rough), 'colebrook': Colebrook(reynolds, rough),
                'haaland': Haaland(reynolds, rough), 'swameeJain': Swamee_Jain_1976(reynolds, rough),
            })
    return rows


def laminar():
    return [{'reynolds': r, 'laminar': friction_laminar(r), 'churchill': Churchill_1977(r, 0.0)} for r in (200.0, 1000.0, 2000.0)]


def lines():
    rows = []
    for flow, bore, length, fittings in ((30e-6, 0.0047625, 3.0, 4.0), (90e-6, 0.0079375, 4.0, 8.0), (150e-6, 0.010319, 5.0, 12.0), (2e-6, 0.0079375, 4.0, 0.0)):
        density, viscosity, roughness = 740.0, 0.26e-3, 1.5e-6
        speed = flow / (math.pi / 4 * bore ** 2)
        reynolds = Reynolds(V=speed, D=bore, rho=density, mu=viscosity)
        f = Churchill_1977(reynolds, roughness / bore)
        loss = dP_from_K(K_from_f(fd=f, L=length, D=bore) + fittings, rho=density, V=speed)
        rows.append({'flow': flow, 'bore': bore, 'length': length, 'fittings': fittings, 'roughness': roughness, 'density': density, 'viscosity': viscosity, 'reynolds': reynolds, 'loss': loss})
    return rows


def density(name):
    return [{'celsius': c, 'density': thermo.Chemical(name, T=c + 273.15).rhol} for c in (0, 5, 15, 20, 25, 35, 45, 55, 60)]


print(json.dumps({
    'versions': {'python': platform.python_version(), 'fluids': fluids.__version__, 'chemicals': chemicals.__version__, 'thermo': thermo.__version__},
    'friction': friction(), 'laminar': laminar(), 'lines': lines(),
    'widening': [{'diameters': b, 'coefficient': diffuser_sharp(Di1=b, Di2=1.0)} for b in (0.2, 0.4, 0.6, 0.8, 0.95)],
    'ethanol': density('ethanol'),
}, indent=1))
