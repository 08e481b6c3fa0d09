import fc from 'fast-check'
import { expect, test } from 'vitest'
import { coolerEffectivenessInAir } from '@trochoid/compute/boost/coolerEffectivenessInAir.ts'
import { coolerUnitsFrom } from '@trochoid/compute/boost/coolerUnitsFrom.ts'

test('at its rating a cooler has the effectiveness that its rating states, whichever stream is the weaker', () => {
  fc.assert(fc.property(fc.double({ min: 0.1, max: 1, noNaN: true }), fc.double({ min: 0.2, max: 4, noNaN: true }), fc.double({ min: 0.2, max: 0.9, noNaN: true }), (flow, air, share) => {
    // A weak stream of air cannot cool more charge than it is itself.
    const effectiveness = share * Math.min(1, air / flow) * 0.9
    const units = coolerUnitsFrom({ effectiveness, flow, air })
    expect(coolerEffectivenessInAir({ units, flow, ratedFlow: flow, air, ratedAir: air })).toBeCloseTo(effectiveness, 6)
  }))
})
test('a rating that no cooler could have is refused in words', () => expect(() => coolerUnitsFrom({ effectiveness: 0.9, flow: 0.5, air: 0.3 })).toThrow(/do not fit/))
