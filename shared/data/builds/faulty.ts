import { ccPerMin, lPerH, mm } from '../../quantity/si.ts'
import { street } from './street.ts'
import { type Sheet } from '../../build/sheet.ts'

/** The street build with four deliberate faults; `faulty.faults.ts` beside it says which and what each must trip. */
export const faulty: Sheet = {
  ...street,
  name: 'Faulty build (invented)',
  note: 'The invented street build with four deliberate faults for the margins to find.',
  entries: {
    ...street.entries,
    'fuel.primary.ratedFlow': { value: ccPerMin(2000), from: 'measured', note: 'Large primaries, no secondaries wanted at idle' },
    'fuel.pump.ratedFlow': { value: lPerH(170), from: 'maker' },
    'fuel.pump.secondFlow': { value: lPerH(115), from: 'maker' },
    'boost.wastegate.diameter': { value: mm(23), from: 'measured' },
    'driveline.clutch.rating': { value: 360, from: 'maker' },
  },
}
