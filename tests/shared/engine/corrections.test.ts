import { expect, test } from 'vitest'
import { closedPipeFrequency } from '@trochoid/compute/engine/closedPipeFrequency.ts'
import { correctedPower } from '@trochoid/compute/engine/correctedPower.ts'
import { endOfCompression } from '@trochoid/compute/engine/endOfCompression.ts'
import { helmholtzFrequency } from '@trochoid/compute/engine/helmholtzFrequency.ts'
import { isoCorrection } from '@trochoid/compute/engine/isoCorrection.ts'
import { openPipeFrequency } from '@trochoid/compute/engine/openPipeFrequency.ts'
import { saeCorrection } from '@trochoid/compute/engine/saeCorrection.ts'
import { tunedSpeed } from '@trochoid/compute/engine/tunedSpeed.ts'
import { tuningVolume } from '@trochoid/compute/engine/tuningVolume.ts'

test('in standard air nothing is corrected', () => {
  expect(saeCorrection({ dryPressure: 99e3, temperature: 298.15 })).toBeCloseTo(1, 12)
  expect(isoCorrection({ dryPressure: 99e3, temperature: 298 })).toBe(1)
})
test('thin or hot air at the test corrects upwards, by about as much in both', () => {
  for (const [dryPressure, temperature] of [[95e3, 298.15], [99e3, 310], [93e3, 306]] as const) {
    const [sae, iso] = [saeCorrection({ dryPressure, temperature }), isoCorrection({ dryPressure, temperature })]
    expect(sae).toBeGreaterThan(1)
    expect(Math.abs(sae - iso)).toBeLessThan(0.006)
  }
})
test('the factor multiplies', () => expect(correctedPower({ power: 200e3, factor: 1.02 })).toBeCloseTo(204e3, 6))
test('compression keeps pressure times volume over temperature', () => {
  const x = { pressure: 150e3, temperature: 320, compressionRatio: 9, ratioOfSpecificHeats: 1.32 }
  const end = endOfCompression(x)
  expect(end.pressure / x.compressionRatio / end.temperature / (x.pressure / x.temperature)).toBeCloseTo(1, 12)
  expect(endOfCompression({ ...x, ratioOfSpecificHeats: 1 })).toEqual({ pressure: 9 * 150e3, temperature: 320 })
})
test('a longer pipe sounds lower, an open one an octave above a closed one', () => {
  expect(openPipeFrequency({ soundSpeed: 340, length: 1 })).toBe(170)
  expect(openPipeFrequency({ soundSpeed: 340, length: 1 }) / closedPipeFrequency({ soundSpeed: 340, length: 1 })).toBe(2)
})
test('four times the volume halves the Helmholtz frequency, four times the area doubles it', () => {
  const x = { soundSpeed: 343, area: 1e-3, length: 0.3, volume: 4e-4 }
  expect(helmholtzFrequency({ ...x, volume: 1.6e-3 }) / helmholtzFrequency(x)).toBeCloseTo(0.5, 12)
  expect(helmholtzFrequency({ ...x, area: 4e-3 }) / helmholtzFrequency(x)).toBeCloseTo(2, 12)
  expect(helmholtzFrequency({ ...x, length: 1.2 }) / helmholtzFrequency(x)).toBeCloseTo(0.5, 12)
})
test('the tuning volume is the chamber at mid-stroke', () => {
  const [least, most] = [1 / 8, 9 / 8]
  expect(tuningVolume({ displacement: 1, compressionRatio: 9 })).toBeCloseTo((least + most) / 2, 12)
})
test('the duct swings K times for each turn of the shaft', () => expect(tunedSpeed({ frequency: 200, factor: 2 })).toBeCloseTo(200 * Math.PI, 9))
