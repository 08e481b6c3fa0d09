import { expect, test } from 'vitest'
import { mapFile } from '@trochoid/compute/boost/mapFile.ts'
import { mapCommand } from '@trochoid/compute/cli/mapCommand.ts'
import { twinMap } from '@trochoid/compute/data/maps/twin.ts'

const bare = mapFile(twinMap).split('\n').filter((line) => !line.startsWith('reference')).join('\n')

test('a table is read with the reference air it states or is given, and comes back as it was', () => {
  const out = mapCommand(['twin.csv'], () => mapFile(twinMap))
  expect(out.map.lines.length).toBe(twinMap.lines.length)
  expect(out.faults).toEqual([])
  expect(mapCommand(['twin.csv', '--temperature', '25 °C', '--pressure', '100 kPa abs'], () => bare).map).toMatchObject({ referenceTemperature: 298.15, referencePressure: 1e5 })
})
test('without it the command asks, and an option it does not know is refused with those it knows', () => {
  expect(() => mapCommand(['twin.csv'], () => bare)).toThrow(/never assumed/)
  expect(() => mapCommand(['twin.csv', '--colour', 'red'], () => bare)).toThrow(/--temperature/)
  expect(() => mapCommand(['twin.csv'], () => { throw new Error('gone') })).toThrow(/cannot be read/)
})
test('a wheel makes a map that says it is an estimate; diameters the wrong way round make none', () => {
  const out = mapCommand(['--inducer', '58 mm', '--exducer', '77 mm'], () => '')
  expect(out.map.estimate).toBe(true)
  expect(out.faults.filter((f) => f.weight === 'wrong')).toEqual([])
  expect(() => mapCommand(['--inducer', '80 mm', '--exducer', '77 mm'], () => '')).toThrow(/the smaller and the larger/)
})
