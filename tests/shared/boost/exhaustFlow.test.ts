import { expect, test } from 'vitest'
import { exhaustFlow } from '@trochoid/compute/boost/exhaustFlow.ts'

test('what goes in comes out', () => expect(exhaustFlow({ airFlow: 0.33, fuelFlow: 0.028 })).toBeCloseTo(0.358, 15))
