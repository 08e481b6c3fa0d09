import { expect, test } from 'vitest'
import { csv } from '../../src/islands/parts/files.ts'

test('cells are quoted where they must be and never read as formulas', () => {
  expect(csv([['a', 'b,c', 'say "so"', '=1+1', '+2', '@x', '−3']])).toBe('a,"b,c","say ""so""",\'=1+1,\'+2,\'@x,−3')
})
