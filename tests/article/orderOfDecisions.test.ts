import { describe, expect, it } from 'vitest'
import { allFields, margins } from '@trochoid/compute/build/everything.ts'
import { weighMargins } from '@trochoid/compute/build/margins.ts'
import { solveBuild } from '@trochoid/compute/build/solve.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { decisions, standings } from '../../src/article/figures/decision/order.ts'
import { inThresholds, movedLinks } from '../../src/article/figures/decision/moved.ts'

const weighed = (sheet: Parameters<typeof solveBuild>[0]) => weighMargins(margins, solveBuild(sheet), sheet)

describe('the order of decisions', () => {
  it('gives every link one place, knock apart, which no decision settles', () => {
    const placed = decisions.flatMap(({ links }) => links)
    expect([...placed].sort()).toEqual(margins.filter((m) => !m.always).map((m) => m.id).sort())
  })

  it('gives every number of the sheet to one decision at most, and every remedy to one', () => {
    const owners = (path: string) => decisions.filter(({ fields }) => fields.test(path)).map(({ name }) => name)
    const twice = [...allFields.keys()].filter((path) => owners(path).length > 1 && path !== 'engine.speedLimit' && !path.startsWith('fuel.session'))
    expect(twice).toEqual([])
    expect(margins.flatMap((m) => m.remedies.map((r) => r.field.path)).filter((path) => owners(path).length === 0)).toEqual([])
  })

  it('lets a mend reach back only to decisions above', () => {
    for (const sheet of Object.values(builds)) standings(weighed(sheet)).forEach(({ reaches }, mine) => { for (const to of reaches) expect(to).toBeLessThan(mine) })
  })

  it('puts what is short before what is tight, and both before what waits for a number', () => {
    const states = standings(weighed(builds['faulty']!)).map(({ links }) => links.map((w) => w.state))
    for (const own of states) if (own.includes('short')) expect(own[0]).toBe('short')
    expect(states.flat()).toContain('short')
  })
})

describe('links that a change moves', () => {
  const street = weighed(builds.street)

  it('are none where nothing is changed', () => expect(movedLinks(street, street, 10)).toEqual([]))

  it('come with least left first, and knock is never among them', () => {
    const hot = { ...builds.street, entries: { ...builds.street.entries, 'site.airTemperature': { value: 313.15 } } }
    const moved = movedLinks(street, weighed(hot), 50)
    const left = moved.map(({ after }) => inThresholds(after)).filter((x) => x !== null)
    expect(moved.length).toBeGreaterThan(5)
    expect(left).toEqual([...left].sort((a, b) => a - b))
    expect(moved.map(({ after }) => after.id)).toContain('charge-temperature')
    expect(moved.map(({ after }) => after.id)).not.toContain('knock')
  })
})
