import { calculation, free } from '../calculation/calculation.ts'
import { percent } from '../quantity/si.ts'
import { backPressureVe } from './backPressureVe.ts'
import { clearanceGasFactor } from './clearanceGasFactor.ts'
import { engineCompressionRatio, engineOverlapFactor, engineVeBackPressureRatio } from './fields.ts'
import { fillingLost } from './fillingLost.ts'
import { at } from './point.ts'
import { fillingShare, volumetricEfficiency } from './quantities.ts'
import { role } from '../quantity/quantity.ts'

export default calculation({
  id: 've-under-back-pressure', title: 'Filling under back-pressure', theme: 'engine', article: 'the-turbine-and-back-pressure', cautions: ['exhaust-gas', 'model-only'],
  asks: 'How much filling does the pressure before the turbine cost?',
  in: {
    reference: free(volumetricEfficiency, percent(96), 'Volumetric efficiency at the reference ratio'), ratio: at.backPressureRatio, referenceRatio: engineVeBackPressureRatio,
    overlap: engineOverlapFactor, compressionRatio: engineCompressionRatio,
  },
  out: { ve: volumetricEfficiency, lost: fillingShare, clearance: role(volumetricEfficiency, 'f_c', 'What the clearance gas alone would leave, of filling at equal pressures') },
  curve: ['ratio', 've'],
  answer({ reference, ratio, referenceRatio, overlap, compressionRatio }) {
    const ve = backPressureVe({ ve: reference, backPressureRatio: ratio, referenceRatio, overlapFactor: overlap, compressionRatio })
    return { ve, lost: fillingLost({ reference, ve }), clearance: clearanceGasFactor({ backPressureRatio: ratio, compressionRatio }) }
  },
  says: ({ lost }) => lost < 0
    ? 'At {ratio} times the manifold’s pressure before the turbine the engine fills to {ve}, better than at the reference of {referenceRatio}.'
    : 'At {ratio} times the manifold’s pressure before the turbine the engine fills to {ve}: {lost} of its air is gone, and what is left is diluted with burned gas. The same boost on the gauge then makes less power and more heat.',
  leavesOut: 'That the overlap factor is a number of your engine, without a general source: one log at two back-pressures gives it.',
})
