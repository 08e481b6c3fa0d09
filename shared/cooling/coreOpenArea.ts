import { formula, type About } from '../formula/formula.ts'
import { role } from '../quantity/quantity.ts'
import { coreFlowArea, coreWidth, finPitch, finThickness, tubePitch, tubeThickness } from './quantities.ts'

/** Area between tubes and fins. */
export const about = {
  name: 'Area open to the air',
  in: { width: role(coreWidth, 'B', 'Width across the tubes'), height: role(coreWidth, 'H', 'Length of the tubes'), tubePitch, tube: tubeThickness, finPitch, fin: finThickness },
  out: coreFlowArea,
  equation: 'width * height * (1 - tube / tubePitch) * (1 - fin / finPitch)',
  source: ['derived', 'face less the tubes’ and the fins’ edges'],
} as const satisfies About

export const coreOpenArea = formula<typeof about>('core-open-area', {}, ({ width, height, tubePitch: pitch, tube, finPitch: spacing, fin }) => width * height * (1 - tube / pitch) * (1 - fin / spacing))
