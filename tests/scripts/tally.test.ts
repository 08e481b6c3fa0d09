import { expect, it } from 'vitest'
import { orFailed, sum, whole } from '../../scripts/test/tally.ts'

it('counts a stage that fails as a whole once', () => {
  expect(sum([whole(true), whole(false), { passed: 10, failed: 2 }])).toEqual({ passed: 11, failed: 3 })
})

it('does not let a run that broke off pass', () => {
  expect(orFailed({ passed: 5, failed: 0 }, 1)).toEqual({ passed: 5, failed: 1 })
  expect(orFailed({ passed: 5, failed: 0 }, 0)).toEqual({ passed: 5, failed: 0 })
  expect(orFailed({ passed: 5, failed: 2 }, 1)).toEqual({ passed: 5, failed: 2 })
})
