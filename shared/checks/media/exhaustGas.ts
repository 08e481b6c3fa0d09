import { type Check } from '../check.ts'

const why = 'A straight line of specific heat stands for the polynomials: it is fitted to within 0.19 % of their enthalpy from 500 to 1400 K.'

/** Against the polynomials that the line was fitted to, and against a table of its own origin. */
export const checks: readonly Check[] = [
  ...([[700, 455300], [1000, 825736], [1300, 1219169]] as const).map(([temperature, enthalpy]): Check => ({
    id: `exhaust-enthalpy-${temperature}`, of: 'exhaust-enthalpy', in: { temperature }, out: { out: { value: enthalpy / 1000, unit: 'kJ/kg', tolerance: 5e-4 } },
    source: 'NASA polynomials of GRI-Mech 3.0, petrol at lambda 0.85, summed by tests/reference/exhaustGas.py', confidence: 'derived independently', differs: why,
  })),
  { id: 'exhaust-enthalpy-janaf-1000', of: 'exhaust-enthalpy', in: { temperature: 1000 }, out: { out: { value: 825.6, unit: 'kJ/kg', tolerance: 0.05 } },
    source: 'NIST-JANAF Thermochemical Tables (1998), enthalpies at 1000 K of N2 21.463, Ar 14.589, CO2 33.397, CO 21.690, H2O 26.000, H2 20.680 kJ/mol, summed by hand for petrol at lambda 0.85',
    confidence: 'from memory', differs: why },
]
