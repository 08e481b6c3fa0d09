import { expect, test } from 'vitest'
import { withParts } from '../../scripts/build/pages.ts'

test('a built page names the file of the code that holds a calculation, or its own file where there is none', () => {
  const parts = new Map([['injectorDuty', 'injectorDuty.calc.1a2b.js']])
  expect(withParts('<section data-file="fuel/injectorDuty" data-uid="a"></section>', parts)).toBe('<section data-file="injectorDuty.calc.1a2b.js" data-uid="a"></section>')
  expect(withParts('<section data-file="boost/timeToBoost"></section>', parts)).toBe('<section data-file="boost/timeToBoost"></section>')
})
