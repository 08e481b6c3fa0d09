import { expect, test } from 'vitest'
import { valveDiameterFor } from '@trochoid/compute/boost/valveDiameterFor.ts'
import { valveFlowArea } from '@trochoid/compute/boost/valveFlowArea.ts'

test('gives back the bore behind an area', () => expect(valveDiameterFor({ area: valveFlowArea({ diameter: 0.038, number: 2 }), number: 2 })).toBeCloseTo(0.038, 15))
