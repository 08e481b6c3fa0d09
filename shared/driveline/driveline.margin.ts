import { margin } from '../build/margin.ts'
import { at } from './point.ts'
import { axleRatio, clutchRating, differentialRating, firstGear, gearboxRating, halfShaftRating, lock } from './fields.ts'

const shared = { theme: 'driveline', article: 'the-order-of-decisions', over: 'sweep', must: 'stay below', as: 'share', tight: 0.15 } as const

export default [
  margin({
    ...shared,
    id: 'gearbox-torque',
    title: 'Gearbox',
    demand: at.gearboxTorque,
    capacity: gearboxRating,
    rests: [gearboxRating],
    remedies: [
      { field: gearboxRating, move: 'up', says: 'Fit a gearbox rated for more' },
      { field: clutchRating, move: 'down', says: 'Let a weaker clutch be the fuse' },
    ],
    says: 'At {speed} the gearbox is asked {demand} of the {capacity} it is rated for: {margin}.',
    settle: 'The gearbox maker’s input rating in writing, with the gear and the life it is stated for.',
  }),
  margin({
    ...shared,
    id: 'differential-torque',
    title: 'Differential',
    demand: at.differentialTorque,
    capacity: differentialRating,
    rests: [differentialRating],
    remedies: [
      { field: differentialRating, move: 'up', says: 'Fit a differential rated for more' },
      { field: firstGear, move: 'down', says: 'Use a taller first gear' },
    ],
    says: 'In first gear at {speed} the differential gives {demand} of the {capacity} it is rated for: {margin}.',
    settle: 'The maker’s output rating in writing; the tyres set the most it can be asked.',
  }),
  margin({
    ...shared,
    id: 'half-shaft-torque',
    title: 'Half-shafts',
    demand: at.halfShaftTorque,
    capacity: halfShaftRating,
    rests: [halfShaftRating],
    remedies: [
      { field: halfShaftRating, move: 'up', says: 'Fit stronger half-shafts' },
      { field: lock, move: 'down', says: 'Set the differential to lock less' },
      { field: axleRatio, move: 'down', says: 'Use a taller final drive' },
    ],
    says: 'In first gear at {speed} the busier half-shaft carries {demand} of the {capacity} it is rated for: {margin}.',
    settle: 'The shaft maker’s rating in writing, and the differential’s bias measured by torque wrench with one wheel held.',
  }),
]
