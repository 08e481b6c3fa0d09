import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'

const rpm = Math.PI / 30

/** An engine and its turbocharger as the formulas of threshold and response take them; the street build’s numbers. */
export const engine = {
  charge: 320, referenceRatio: 1, overlapFactor: 0.1, compressionRatio: 9, displacement: 672.98e-6, rotors: 2, lambda: 0.82, stoichiometricRatio: 14.3, outside: 101325, temperature: 298.15,
  inletLoss: 30e3, coolerLoss: 90e3, exhaustLoss: 100e3, turbineTemperature: 1150, flowCapacity: 0.25, turbineEfficiency: 0.58, mechanicalEfficiency: 0.97,
}
export const curve = { x: [1000, 3000, 6000, 9000].map((n) => n * rpm), y: [0.74, 0.86, 0.98, 0.84] }
export const onMap = { map: mediumMap, turbos: 1 }
export { rpm }
