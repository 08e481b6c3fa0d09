import { expect, test } from 'vitest'
import { compressorAt } from '@trochoid/compute/boost/compressorAt.ts'
import { overLowestLine } from '@trochoid/compute/boost/overLowestLine.ts'
import { mediumMap as map } from '@trochoid/compute/data/maps/medium.ts'

test('a reading is an estimate just where its speed lies below the lowest line', () => {
  for (const [flow, ratio] of [[0.05, 1.05], [0.1, 1.15], [0.1, 1.234], [0.1, 1.25], [0.2, 1.6], [0.3, 2.1]] as const) {
    const { speed, estimated } = compressorAt({ map, flow, ratio })
    expect(overLowestLine({ map, speed }) < 1, `${flow} ${ratio}`).toBe(estimated === 1)
  }
})
