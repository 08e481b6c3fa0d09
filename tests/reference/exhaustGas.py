"""Fits the specific heat of rich exhaust gas that shared/media uses, and writes the enthalpies it is tested against.

Ideal-gas heat capacities: NASA 7-coefficient polynomials of GRI-Mech 3.0 (Smith and others, 1999). Composition: petrol CH1.85
burned in dry air at lambda 0.85, products held at a water-gas constant of 3.5 (Heywood 1988, section 4.9.2: frozen near 1740 K).
Run: python3 tests/reference/exhaustGas.py > tests/reference/exhaustGas.json
"""
import json
import platform

import numpy

R = 8.31446261815324
MOLAR = {'CO2': 44.0095, 'CO': 28.0101, 'H2O': 18.01528, 'H2': 2.01588, 'N2': 28.0134, 'AR': 39.948, 'O2': 31.9988}
# Low range (to 1000 K), high range: a1..a5 of cp/R. Enthalpy differences need no a6 as long as both ranges are integrated in turn.
NASA = {
    'H2': ([2.34433112, 7.98052075e-03, -1.9478151e-05, 2.01572094e-08, -7.37611761e-12], [3.3372792, -4.94024731e-05, 4.99456778e-07, -1.79566394e-10, 2.00255376e-14]),
    'O2': ([3.78245636, -2.99673416e-03, 9.84730201e-06, -9.68129509e-09, 3.24372837e-12], [3.28253784, 1.48308754e-03, -7.57966669e-07, 2.09470555e-10, -2.16717794e-14]),
    'H2O': ([4.19864056, -2.0364341e-03, 6.52040211e-06, -5.48797062e-09, 1.77197817e-12], [3.03399249, 2.17691804e-03, -1.64072518e-07, -9.7041987e-11, 1.68200992e-14]),
    'CO': ([3.57953347, -6.1035368e-04, 1.01681433e-06, 9.07005884e-10, -9.04424499e-13], [2.71518561, 2.06252743e-03, -9.98825771e-07, 2.30053008e-10, -2.03647716e-14]),
    'CO2': ([2.35677352, 8.98459677e-03, -7.12356269e-06, 2.45919022e-09, -1.43699548e-13], [3.85746029, 4.41437026e-03, -2.21481404e-06, 5.23490188e-10, -4.72084164e-14]),
    'N2': ([3.298677, 1.4082404e-03, -3.963222e-06, 5.641515e-09, -2.444854e-12], [2.92664, 1.4879768e-03, -5.68476e-07, 1.0097038e-10, -6.753351e-15]),
    'AR': ([2.5, 0, 0, 0, 0], [2.5, 0, 0, 0, 0]),
}
T0 = 298.15


def products(lam, hydrogen=1.85, water_gas=3.5):
    """Mole shares of burned gas, per mole of CH(hydrogen)."""
    oxygen = lam * (1 + hydrogen / 4)
    n = {'N2': oxygen * 78.084 / 20.946, 'AR': oxygen * 0.934 / 20.946}
    if lam >= 1:
        n |= {'CO2': 1, 'H2O': hydrogen / 2, 'O2': oxygen - 1 - hydrogen / 4}
    else:
        # CO2 + CO = 1; H2O + H2 = h/2; 2 CO2 + CO + H2O = 2 oxygen; CO * H2O = K * CO2 * H2
        h2o = lambda co2: 2 * oxygen - 1 - co2
        f = lambda co2: (1 - co2) * h2o(co2) - water_gas * co2 * (hydrogen / 2 - h2o(co2))
        low, high = max(0, 2 * oxygen - 1 - hydrogen / 2), min(1, 2 * oxygen - 1)
        for _ in range(200):
            middle = (low + high) / 2
            low, high = (middle, high) if f(low) * f(middle) > 0 else (low, middle)
        co2 = (low + high) / 2
        n |= {'CO2': co2, 'CO': 1 - co2, 'H2O': h2o(co2), 'H2': hydrogen / 2 - h2o(co2)}
    total = sum(n.values())
    return {k: v / total for k, v in n.items()}


def molar_heat(species, T):
    a = NASA[species][0 if T <= 1000 else 1]
    return R * sum(c * T**i for i, c in enumerate(a))


def molar_enthalpy(species, T):
    def part(a, start, end):
        return R * sum(c * (end**(i + 1) - start**(i + 1)) / (i + 1) for i, c in enumerate(a))
    low, high = NASA[species]
    return part(low, T0, min(T, 1000)) + (part(high, 1000, T) if T > 1000 else 0)


def of_mass(property_of, shares, T):
    mass = sum(MOLAR[s] * x for s, x in shares.items()) / 1000
    return sum(x * property_of(s, T) for s, x in shares.items()) / mass


def fit(shares, low, high):
    """Least squares of h = a (T - T0) + b/2 (T^2 - T0^2), relative error, every 10 K."""
    T = numpy.arange(low, high + 1, 10.0)
    h = numpy.array([of_mass(molar_enthalpy, shares, t) for t in T])
    basis = numpy.stack([(T - T0) / h, (T**2 - T0**2) / 2 / h], axis=1)
    (a, b), *_ = numpy.linalg.lstsq(basis, numpy.ones_like(T), rcond=None)
    error = (a * (T - T0) + b / 2 * (T**2 - T0**2)) / h - 1
    return float(a), float(b), float(numpy.abs(error).max())


def main():
    shares = products(0.85)
    molar = sum(MOLAR[s] * x for s, x in shares.items())
    a, b, worst = fit(shares, 500, 1400)
    print(json.dumps({
        'made by': f'tests/reference/exhaustGas.py, Python {platform.python_version()}, numpy {numpy.__version__}',
        'source': 'NASA 7-coefficient polynomials of GRI-Mech 3.0 (Smith and others, 1999); petrol CH1.85 at lambda 0.85, water-gas constant 3.5',
        'mole shares': {k: round(v, 6) for k, v in shares.items()},
        'gas constant, J/(kg K)': round(1000 * R / molar, 4),
        'fit': {'a, J/(kg K)': round(a, 4), 'b, J/(kg K2)': round(b, 6), 'from, K': 500, 'to, K': 1400, 'largest relative error of enthalpy': round(worst, 5)},
        'enthalpy above 298.15 K, J/kg': {lam: {str(T): round(of_mass(molar_enthalpy, products(float(lam)), T)) for T in (500, 700, 900, 1000, 1100, 1200, 1300, 1400)} for lam in ('0.75', '0.80', '0.85', '0.90', '1.00')},
        'specific heat, J/(kg K)': {str(T): round(of_mass(molar_heat, shares, T), 2) for T in (500, 700, 900, 1000, 1100, 1200, 1300, 1400)},
    }, indent=1))


main()
