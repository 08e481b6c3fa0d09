import { choice, curveOf, quantity } from '../quantity/quantity.ts'
import { degC, ms, percent, rpm } from '../quantity/si.ts'

// Coils
export const coilInductance = quantity('Inductance of a coil', 'L_c', 'inductance', [0.3e-3, 20e-3], 0.1e-3)
export const coilResistance = quantity('Resistance of the coil circuit', 'R_c', 'resistance', [0.1, 5], 0.02)
export const coilCurrent = quantity('Current of a coil', 'I_c', 'current', [1, 40], 0.2)
export const coilVoltage = quantity('Voltage at the coil', 'U_c', 'voltage', [5, 18], 0.1)
export const driverDrop = quantity('Voltage kept by the driver', 'U_s', 'voltage', [0, 4], 0.1)
export const chargeTime = quantity('Coil charge time', 't_c', 'time', [ms(0.2), ms(20)], ms(0.05))
export const chargeWindow = quantity('Time there is to charge', 't_w', 'time', [ms(0.5), ms(70)], ms(0.05))
export const burnTime = quantity('Time a spark burns', 't_b', 'time', [ms(0.2), ms(3)], ms(0.1))
export const sparkPeriod = quantity('Time from spark to spark', 't_p', 'time', [ms(1), ms(150)], ms(0.05))
export const coilEnergy = quantity('Energy stored in a coil', 'E_c', 'energy', [5e-3, 0.5], 2e-3, { show: ['mJ', 'mJ'] })
export const energyShare = quantity('Share of the energy wanted', 'E/E_w', 'share', [0, 1], percent(2))
export const coilLayout = choice('How the coils are shared', { own: 'a coil for each plug', shared: 'a coil fires plugs of both rotors' })
export const sparksPerTurn = quantity('Sparks of a coil in a shaft turn', 'k', 'number', [1, 4], 1, { whole: true })
export const coilCount = quantity('Number of coils', 'z_c', 'number', [1, 12], 1, { whole: true })

// Charging
export const alternatorSpeed = quantity('Speed of the alternator', 'n_a', 'shaftSpeed', [rpm(500), rpm(24000)], rpm(50))
export const alternatorCurrent = quantity('Current of the alternator', 'I_a', 'current', [0, 300], 2)
export const alternatorCurve = curveOf('Alternator current over its speed', alternatorSpeed, alternatorCurrent)
export const pulleyRatio = quantity('Pulley ratio of the alternator', 'i_p', 'number', [0.8, 4], 0.02)
export const alternatorTemperature = quantity('Air at the alternator', 'T_a', 'temperature', [degC(-20), degC(130)], 5)
export const outputShare = quantity('Share of the rated output left', 'y_a', 'share', [percent(30), percent(120)], percent(5))
export const loadCurrent = quantity('Current of a load', 'I', 'current', [0, 100], 0.5)
export const electricLoad = quantity('Current asked', 'I_s', 'current', [0, 300], 1)
export const primaryCount = quantity('Injectors that pulse at idle', 'z_i', 'number', [1, 8], 1, { whole: true })

// Wires
export const wireCurrent = quantity('Current in a wire', 'I_w', 'current', [0.05, 300], 0.5)
export const wireLength = quantity('Length of a wire', 'l_w', 'length', [0.1, 20], 0.05, { show: ['m', 'ft'] })
export const wireArea = quantity('Copper section of a wire', 'A_w', 'area', [0.1e-6, 120e-6], 0.05e-6, { show: ['mm²', 'in²'] })
export const wireTemperature = quantity('Temperature of a wire', 'T_w', 'temperature', [degC(-30), degC(150)], 5)
export const wireResistance = quantity('Resistance of a wire', 'R_w', 'resistance', [1e-5, 5], 1e-4, { show: ['mΩ', 'mΩ'] })
export const wireDrop = quantity('Voltage drop of a wire', 'ΔU_w', 'voltage', [0, 10], 0.02)
export const wireHeat = quantity('Heat made in a wire', 'P_w', 'power', [1e-4, 500], 0.1, { show: ['W', 'W'] })
