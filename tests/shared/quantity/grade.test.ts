import { describe, expect, test } from 'vitest'
import { gradeParts, readGrade } from '@trochoid/compute/quantity/grade.ts'

describe('oil grades', () => {
  test.each([['10W-40', '10W-40'], ['10w40', '10W-40'], ['SAE 10W-40', '10W-40'], ['sae10w/40', '10W-40'], [' 20 W 50 ', '20W-50'], ['0W–16', '0W-16'], ['30', '30'], ['SAE 30', '30'], ['20W', '20W'], ['5W−30', '5W-30']])('%s is %s', (text, grade) => {
    expect(readGrade(text)).toEqual({ ok: true, value: grade })
  })
  test.each([['12W-40', 'no winter grade 12W'], ['10W-45', 'no grade 45'], ['35', 'no grade 35'], ['', 'is not an oil grade'], ['oil', 'is not an oil grade'], ['10W-', 'is not an oil grade'], ['10W-40-50', 'is not an oil grade'], ['W40', 'is not an oil grade'], ['<b>', 'is not an oil grade']])('%s is refused', (text, says) => {
    const read = readGrade(text)
    expect(read.ok).toBe(false)
    expect(!read.ok && read.says).toContain(says)
  })
  test('every grade of the standard is read, and taken apart again', () => {
    for (const cold of [0, 5, 10, 15, 20, 25]) for (const hot of [8, 12, 16, 20, 30, 40, 50, 60]) {
      expect(readGrade(`${cold}W-${hot}`)).toEqual({ ok: true, value: `${cold}W-${hot}` })
      expect(gradeParts(`${cold}W-${hot}`)).toEqual({ cold, hot })
    }
    expect(gradeParts('40')).toEqual({ cold: null, hot: 40 })
    expect(gradeParts('15W')).toEqual({ cold: 15, hot: null })
    expect(gradeParts('what')).toEqual({ cold: null, hot: null })
  })
})
