import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { efficiencyBand, turbineEfficiency } from './quantities.ts'

/** Low and high end of the turbine’s efficiency. */
export const about = {
  name: 'Band of turbine efficiency',
  in: { efficiency: turbineEfficiency, band: efficiencyBand },
  out: { low: role(turbineEfficiency, 'η_t,low', 'Low end of turbine efficiency'), high: role(turbineEfficiency, 'η_t,high', 'High end of turbine efficiency') },
  equation: { low: 'efficiency - band', high: 'efficiency + band' },
  source: ['common-practice', 'half the band is the reader’s to set'],
} as const satisfies About

export const turbineEfficiencyBand = formula<typeof about>('turbine-efficiency-band', {}, ({ efficiency, band }) => ({ low: efficiency - band, high: efficiency + band }))
