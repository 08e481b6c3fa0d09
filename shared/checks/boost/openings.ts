import { type Check } from '../check.ts'

/** Gas through nozzles and openings. */
export const checks: readonly Check[] = [
  {
    id: 'critical-ratio-1-2', of: 'critical-pressure-ratio',
    in: { heatRatio: 1.2 },
    out: { out: { value: 0.564474, unit: '1', tolerance: 6e-07 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), P_critical_flow', confidence: 'computed by a reference library',
  },
  {
    id: 'critical-ratio-1-3', of: 'critical-pressure-ratio',
    in: { heatRatio: 1.3 },
    out: { out: { value: 0.545728, unit: '1', tolerance: 6e-07 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), P_critical_flow', confidence: 'computed by a reference library',
  },
  {
    id: 'critical-ratio-1-35', of: 'critical-pressure-ratio',
    in: { heatRatio: 1.35 },
    out: { out: { value: 0.536851, unit: '1', tolerance: 6e-07 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), P_critical_flow', confidence: 'computed by a reference library',
  },
  {
    id: 'critical-ratio-1-4', of: 'critical-pressure-ratio',
    in: { heatRatio: 1.4 },
    out: { out: { value: 0.528282, unit: '1', tolerance: 6e-07 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), P_critical_flow', confidence: 'computed by a reference library',
  },
  {
    id: 'critical-ratio-naca-1135', of: 'critical-pressure-ratio',
    in: { heatRatio: 1.4 },
    out: { out: { value: 0.5283, unit: '1', tolerance: 5e-05 } },
    source: 'NACA Report 1135 (1953), pressure ratio at Mach 1', confidence: 'from memory',
  },
  {
    id: 'choked-cengel-17-throat-20', of: 'choked-flow',
    in: { area: '20 cm²', dischargeCoefficient: 1, inletPressure: '1 MPa abs', inletTemperature: '800 K', heatRatio: 1.4, gasConstant: 287 },
    out: { out: { value: 2.86, unit: 'kg/s', tolerance: 0.005 } },
    source: 'Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 17, converging-diverging nozzle at 1 MPa and 800 K', confidence: 'from memory',
  },
  {
    id: 'choked-cengel-17-nozzle-50', of: 'wastegate-capacity',
    in: { area: '50 cm²', dischargeCoefficient: 1, inletPressure: '1.045 MPa abs', inletTemperature: '884 K', outletPressure: '0.4 MPa abs', heatRatio: 1.4, gasConstant: 287 },
    out: { out: { value: 7.1, unit: 'kg/s', tolerance: 0.005 } },
    source: 'Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 17, converging nozzle, back pressure 0.4 MPa', confidence: 'from memory',
  },
  {
    id: 'subsonic-cengel-17-nozzle-50', of: 'wastegate-capacity',
    in: { area: '50 cm²', dischargeCoefficient: 1, inletPressure: '1.045 MPa abs', inletTemperature: '884 K', outletPressure: '0.7 MPa abs', heatRatio: 1.4, gasConstant: 287 },
    out: { out: { value: 6.77, unit: 'kg/s', tolerance: 0.01 } },
    source: 'Cengel and Boles, Thermodynamics: An Engineering Approach, chapter 17, converging nozzle, back pressure 0.7 MPa; read from the table at a Mach number of three figures', confidence: 'from memory',
  },
  {
    id: 'choked-sae-j228-flux', of: 'choked-flow',
    in: { area: '1 m²', dischargeCoefficient: 1, inletPressure: '100 kPa abs', inletTemperature: '298.15 K', heatRatio: 1.4, gasConstant: 287.05 },
    out: { out: { value: 234.06, unit: 'kg/s', tolerance: 0.006 } },
    source: 'Sonic nozzle at the conditions of SAE J228, 100 kPa and 25 °C (conditions confirmed by search), flux for dry air worked out in Python', confidence: 'derived independently',
  },
  {
    id: 'choked-nasa-flux-isa', of: 'choked-flow',
    in: { area: '1 m²', dischargeCoefficient: 1, inletPressure: '101.325 kPa abs', inletTemperature: '288.15 K', heatRatio: 1.4, gasConstant: 287.05287 },
    out: { out: { value: 241.24, unit: 'kg/s', tolerance: 0.01 } },
    source: 'NASA Glenn, corrected airflow per area at Mach 1: 49.41 lb/s/ft²; page confirmed by search, value in SI worked out in Python', confidence: 'confirmed by search',
  },
  {
    id: 'choked-api-520-example-1', of: 'choked-flow',
    in: { area: 3.69904606e-3, dischargeCoefficient: 0.975, inletPressure: '670 kPa abs', inletTemperature: '348 K', heatRatio: 1.11, gasConstant: 146.7258 },
    out: { out: { value: 6.7417, unit: 'kg/s', tolerance: 0.0009 } },
    source: 'API 520 part 1, example of critical gas flow, 24,270 kg/h, area as printed by the documentation of fluids 1.0.22, which states that it matches; the standard’s constant 0.03948 has four figures', confidence: 'read in the source',
  },
  {
    id: 'subsonic-api-520-example-2', of: 'subsonic-flow',
    in: { area: 4.24835878e-3, dischargeCoefficient: 0.975, inletPressure: '670 kPa abs', inletTemperature: '348 K', outletPressure: '532 kPa abs', heatRatio: 1.11, gasConstant: 146.7258 },
    out: { out: { value: 6.7417, unit: 'kg/s', tolerance: 0.019 } },
    source: 'API 520 part 1, example of subcritical gas flow, 24,270 kg/h, area as printed by the documentation of fluids 1.0.22, which states that it matches; the standard’s constant 17.9 has three figures', confidence: 'read in the source',
  },
  {
    id: 'relief-library-1', of: 'wastegate-capacity',
    in: { area: '1 m²', dischargeCoefficient: 0.7, inletPressure: 270000.0, inletTemperature: 1200, outletPressure: 130000.0, heatRatio: 1.32, gasConstant: 296.945093 },
    out: { out: { value: 212.3986, unit: 'kg/s', tolerance: 0.03 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), API520_A_g; choked, constant printed to four figures', confidence: 'computed by a reference library',
  },
  {
    id: 'relief-library-2', of: 'wastegate-capacity',
    in: { area: '1 m²', dischargeCoefficient: 0.7, inletPressure: 200000.0, inletTemperature: 1150, outletPressure: 140000.0, heatRatio: 1.32, gasConstant: 296.945093 },
    out: { out: { value: 151.2407, unit: 'kg/s', tolerance: 0.43 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), API520_A_g; subsonic, constant printed to three figures', confidence: 'computed by a reference library',
  },
  {
    id: 'relief-library-3', of: 'wastegate-capacity',
    in: { area: '1 m²', dischargeCoefficient: 0.7, inletPressure: 150000.0, inletTemperature: 1100, outletPressure: 125000.0, heatRatio: 1.35, gasConstant: 287.10161 },
    out: { out: { value: 97.4745, unit: 'kg/s', tolerance: 0.28 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), API520_A_g; subsonic, constant printed to three figures', confidence: 'computed by a reference library',
  },
  {
    id: 'relief-library-4', of: 'wastegate-capacity',
    in: { area: '1 m²', dischargeCoefficient: 0.7, inletPressure: 400000.0, inletTemperature: 1250, outletPressure: 101325, heatRatio: 1.4, gasConstant: 287.10161 },
    out: { out: { value: 320.0348, unit: 'kg/s', tolerance: 0.045 } },
    source: 'fluids 1.0.22 (Debian python3-fluids), API520_A_g; choked, constant printed to four figures', confidence: 'computed by a reference library',
  },
  {
    id: 'subsonic-naca-1135-mach-0-3', of: 'subsonic-flow',
    in: { area: '1 m²', dischargeCoefficient: 1, inletPressure: 100000, inletTemperature: '300 K', outletPressure: 93950, heatRatio: 1.4, gasConstant: 287.05287 },
    out: { out: { value: 114.661, unit: 'kg/s', tolerance: 0.072 } },
    source: 'NACA Report 1135 (1953), table of subsonic flow, γ = 1.4: pressure ratio and A/A* at Mach 0.3; flow is the choked one over A/A*', confidence: 'from memory',
  },
  {
    id: 'subsonic-naca-1135-mach-0-5', of: 'subsonic-flow',
    in: { area: '1 m²', dischargeCoefficient: 1, inletPressure: 100000, inletTemperature: '300 K', outletPressure: 84300, heatRatio: 1.4, gasConstant: 287.05287 },
    out: { out: { value: 174.13, unit: 'kg/s', tolerance: 0.087 } },
    source: 'NACA Report 1135 (1953), table of subsonic flow, γ = 1.4: pressure ratio and A/A* at Mach 0.5; flow is the choked one over A/A*', confidence: 'from memory',
  },
  {
    id: 'subsonic-naca-1135-mach-0-8', of: 'subsonic-flow',
    in: { area: '1 m²', dischargeCoefficient: 1, inletPressure: 100000, inletTemperature: '300 K', outletPressure: 65600, heatRatio: 1.4, gasConstant: 287.05287 },
    out: { out: { value: 224.792, unit: 'kg/s', tolerance: 0.115 } },
    source: 'NACA Report 1135 (1953), table of subsonic flow, γ = 1.4: pressure ratio and A/A* at Mach 0.8; flow is the choked one over A/A*', confidence: 'from memory',
  },
]
