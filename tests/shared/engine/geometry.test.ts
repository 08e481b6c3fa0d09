import fc from 'fast-check'
import { expect, test } from 'vitest'
import { compressionRatioOfRecess } from '@trochoid/compute/engine/compressionRatioOfRecess.ts'
import { flankGapVolume } from '@trochoid/compute/engine/flankGapVolume.ts'
import { leaningAngle } from '@trochoid/compute/engine/leaningAngle.ts'
import { quotedDisplacements } from '@trochoid/compute/engine/quotedDisplacements.ts'
import { recessForCompressionRatio } from '@trochoid/compute/engine/recessForCompressionRatio.ts'
import { rotorLoad } from '@trochoid/compute/engine/rotorLoad.ts'
import { rotorSpeed } from '@trochoid/compute/engine/rotorSpeed.ts'
import { theoreticalCompressionRatio } from '@trochoid/compute/engine/theoreticalCompressionRatio.ts'
import { cm3 } from '@trochoid/compute/quantity/si.ts'

const chamber = { displacement: cm3(673), minimumVolume: cm3(38.8), gapVolume: cm3(3), plugVolume: cm3(1) }

test('recess and compression ratio are each other’s inverse', () => {
  fc.assert(fc.property(fc.double({ min: 6, max: 14, noNaN: true }), (compressionRatio) => {
    const recess = recessForCompressionRatio({ ...chamber, compressionRatio })
    expect(compressionRatioOfRecess({ ...chamber, recess })).toBeCloseTo(compressionRatio, 9)
  }))
})
test('a higher ratio leaves less recess, and past what the gaps allow none', () => {
  expect(recessForCompressionRatio({ ...chamber, compressionRatio: 10 })).toBeLessThan(recessForCompressionRatio({ ...chamber, compressionRatio: 9 }))
  const most = theoreticalCompressionRatio({ displacement: chamber.displacement, minimumVolume: chamber.minimumVolume + chamber.gapVolume + chamber.plugVolume })
  expect(recessForCompressionRatio({ ...chamber, compressionRatio: most })).toBeCloseTo(0, 12)
})
test('without recess, gap and plug holes the ratio is the theoretical one', () => {
  const bare = { ...chamber, gapVolume: 0, plugVolume: 0, recess: 0 }
  expect(compressionRatioOfRecess(bare)).toBe(theoreticalCompressionRatio(chamber))
})
test('the apex seal leans 30° where the generating radius is six eccentricities', () => expect(leaningAngle({ generatingRadius: 0.09, eccentricity: 0.015 })).toBeCloseTo(Math.PI / 6, 12))
test('the gap is a thin slab', () => expect(flankGapVolume({ gap: 2e-4, flank: 0.19, width: 0.08 })).toBeCloseTo(3.04e-6, 12))
test('three conventions are as one to two to three', () => {
  const { oneTurn, twoTurns, threeTurns } = quotedDisplacements({ displacement: cm3(655), rotors: 2 })
  expect(oneTurn).toBeCloseTo(cm3(1310), 12)
  expect(twoTurns / oneTurn).toBeCloseTo(2, 12)
  expect(threeTurns / oneTurn).toBeCloseTo(3, 12)
})
test('twice the speed is four times the load', () => {
  expect(rotorLoad({ mass: 4, eccentricity: 0.015, speed: 100 })).toBeCloseTo(600, 9)
  expect(rotorLoad({ mass: 4, eccentricity: 0.015, speed: 200 })).toBeCloseTo(2400, 9)
})
test('the rotor turns at a third of the shaft', () => expect(rotorSpeed({ speed: 900 })).toBe(300))
