import { margins } from '@trochoid/compute/build/everything.ts'
import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'

test('every margin is told in plain words, and nothing else is', () => {
  const told = readdirSync('content/plainly').map((file) => file.replace(/\.json$/, ''))
  expect(told.sort()).toEqual(margins.map(({ id }) => id).sort())
})
