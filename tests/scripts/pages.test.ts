import { expect, test } from 'vitest'
import { withParts } from '../../scripts/build/pages.ts'

test('a built page names the file of the code that holds a calculation or a figure, or its own file where there is none', () => {
  const parts = new Map([['injectorDuty', 'injectorDuty.calc.1a2b.js'], ['engine-on-map', 'engine-on-map.3c4d.js']])
  expect(withParts('<section data-file="fuel/injectorDuty" data-uid="a"></section>', parts)).toBe('<section data-file="injectorDuty.calc.1a2b.js" data-uid="a"></section>')
  expect(withParts('<div data-file="figures/engine-on-map"></div>', parts)).toBe('<div data-file="engine-on-map.3c4d.js"></div>')
  expect(withParts('<section data-file="boost/timeToBoost"></section>', parts)).toBe('<section data-file="boost/timeToBoost"></section>')
})
