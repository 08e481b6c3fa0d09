import { expect, test } from 'vitest'
import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { sentence, weighMargins } from '@trochoid/compute/build/margins.ts'
import { setEntry } from '@trochoid/compute/build/sheet.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'

const weighed = (heat: number) => { const sheet = setEntry(builds.street, 'cooling.radiator.ratedHeat', { value: heat }); return weighMargins(margins, solveBuild(sheet, [400, 600, 800]), sheet) }
test('a build that boils has no coolant temperature: both its margins are short and say why', () => {
  expect(allFields.has('cooling.radiator.ratedHeat')).toBe(true)
  for (const id of ['coolant-temperature', 'boil-margin']) {
    const boiling = weighed(22e3).find((w) => w.id === id)!
    expect(boiling.state).toBe('short')
    expect(sentence(boiling)).toContain('boils at')
    expect(weighed(110e3).find((w) => w.id === id)!.failed).toBeNull()
  }
})
