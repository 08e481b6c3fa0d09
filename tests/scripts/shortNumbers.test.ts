import { expect, test } from 'vitest'
import { withShortNumbers } from '../../scripts/build/shortNumbers.ts'

test('places in a drawing are kept to a hundredth, words beside them as they are', () => {
  expect(withShortNumbers('<svg viewBox="0 0 1 1"><line x1="252.66666666666669" y1="7.105427357601002e-15" /><path d="M1.23456,2.5L-3.999999,4" /><text x="1.005">0.02896442</text></svg> 0.123456 <rect width="1.23456" />'))
    .toBe('<svg viewBox="0 0 1 1"><line x1="252.67" y1="0" /><path d="M1.23,2.5L-4,4" /><text x="1">0.02896442</text></svg> 0.123456 <rect width="1.23456" />')
})

test('a value behind a number in a text is kept to seven figures', () => {
  expect(withShortNumbers('<data value="0.0006729754784599899">0.67</data><data value="street">a</data>')).toBe('<data value="0.0006729755">0.67</data><data value="street">a</data>')
})
