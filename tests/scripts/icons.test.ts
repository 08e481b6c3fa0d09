import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { plainIcon } from '../../scripts/icons/icon.ts'

it('the icon is the one that the code draws', () => {
  expect(readFileSync(new URL('../../public/icon.svg', import.meta.url), 'utf8')).toBe(plainIcon())
})
