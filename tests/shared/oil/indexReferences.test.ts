import { expect, test } from 'vitest'
import { indexHigh, indexLow, indexNodes } from '@trochoid/compute/data/oilsIndex.ts'
import { indexPolynomial } from '@trochoid/compute/oil/indexPolynomial.ts'
import { indexReferences } from '@trochoid/compute/oil/indexReferences.ts'
import { indexTable } from '@trochoid/compute/oil/indexTable.ts'

test('the table gives every one of its rows and lies straight between them', () => {
  indexNodes.forEach((nu, i) => {
    const { low, high } = indexTable({ viscosity100: nu * 1e-6 })
    expect(low * 1e6).toBeCloseTo(indexLow[i]!, 8)
    expect(high * 1e6).toBeCloseTo(indexHigh[i]!, 8)
    if (i === 0) return
    const middle = indexTable({ viscosity100: (nu + indexNodes[i - 1]!) * 0.5e-6 })
    expect(middle.low * 1e6).toBeCloseTo((indexLow[i]! + indexLow[i - 1]!) / 2, 8)
    expect(middle.high * 1e6).toBeCloseTo((indexHigh[i]! + indexHigh[i - 1]!) / 2, 8)
  })
})
test('the table rises throughout, and index 0 is always the thicker oil', () => {
  for (let i = 1; i < indexNodes.length; i++) {
    expect(indexLow[i]!).toBeGreaterThan(indexLow[i - 1]!)
    expect(indexHigh[i]!).toBeGreaterThan(indexHigh[i - 1]!)
    expect(indexLow[i]!).toBeGreaterThan(indexHigh[i]!)
  }
})
test('table up to 70 mm²/s, equations above', () => {
  expect(indexReferences({ viscosity100: 70e-6 })).toEqual(indexTable({ viscosity100: 70e-6 }))
  expect(indexReferences({ viscosity100: 69e-6 })).toEqual(indexTable({ viscosity100: 69e-6 }))
  expect(indexReferences({ viscosity100: 70.1e-6 })).toEqual(indexPolynomial({ viscosity100: 70.1e-6 }))
})
test('table and equations meet within a thousandth', () => {
  const table = indexTable({ viscosity100: 70e-6 }), equation = indexPolynomial({ viscosity100: 70e-6 })
  expect(equation.low / table.low).toBeCloseTo(1, 3)
  expect(equation.high / table.high).toBeCloseTo(1, 3)
})
