import { expect, test } from 'vitest'
import { migrated, migrations, present } from '@trochoid/compute/build/migrations.ts'

test('the present version stays as it is', () => expect(migrated({ version: present, name: 'x' })).toEqual({ version: present, name: 'x' }))
test('an older one goes through every step, once, in order', () => {
  const steps = { 1: (d: object) => ({ ...d, one: true }), 2: (d: object) => ({ ...d, two: 'one' in d }) }
  expect(migrated({ version: 1 }, steps, 3)).toEqual({ version: 3, one: true, two: true })
  expect(migrated({ version: 2 }, steps, 3)).toEqual({ version: 3, two: false })
})
test('a version without a step is refused', () => expect(migrated({ version: 0 })).toBeNull())
test('a version that is no number is left for the schema to refuse', () => expect(migrated({ version: 'x' })).toEqual({ version: 'x' }))
test('there is a step for every published version', () => expect(Object.keys(migrations).map(Number)).toEqual(Array.from({ length: present - 1 }, (_, i) => i + 1)))
