import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { electricLoad, loadCurrent } from './quantities.ts'

const load = (n: string, name: string) => role(loadCurrent, `I_${n}`, name)

/** Current that all loads ask together, amperes. */
export const about = {
  name: 'Current asked by all loads',
  in: {
    pumps: load('p', 'Fuel pumps'), fans: load('f', 'Fans'), controller: load('e', 'Controller and sensors'), lights: load('l', 'Lights'), cabin: load('k', 'Cabin'),
    coils: load('z', 'Coils'), injectors: load('i', 'Injectors'),
  },
  out: electricLoad,
  equation: 'pumps + fans + controller + lights + cabin + coils + injectors',
  source: ['definition', 'currents of loads in parallel add'],
} as const satisfies About

export const loadSum = formula<typeof about>('load-sum', {}, ({ pumps, fans, controller, lights, cabin, coils, injectors }) =>
  pumps + fans + controller + lights + cabin + coils + injectors)
