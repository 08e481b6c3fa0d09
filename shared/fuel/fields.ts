import { field } from '../build/field.ts'
import { bar, ccPerMin, ms } from '../quantity/si.ts'
import { deadTime, injectorFlow, nozzleDrop } from './quantities.ts'

export const primaryFlow = field('fuel.primary.ratedFlow', injectorFlow, ccPerMin(700), { at: 'fuel.primary.ratedDrop', label: 'Rated flow of a primary' })
export const primaryRatedDrop = field('fuel.primary.ratedDrop', nozzleDrop, bar(3), { label: 'Pressure at which the primary is rated' })
export const primaryDeadTime = field('fuel.primary.deadTime', deadTime, ms(1.0), { label: 'Dead time of a primary' })
