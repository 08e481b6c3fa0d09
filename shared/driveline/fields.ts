import { field } from '../build/field.ts'
import { mm, percent, rpm } from '../quantity/si.ts'
import { shaftSpeed } from '../engine/quantities.ts'
import {
  axleMass, axleTorque, carMass, centreHeight, clampLoad, clampLoss, clutchTorque, dragAreaOf, drivenPlates, driveEfficiency, facingFriction, facingInnerDiameter,
  facingOuterDiameter, finalDrive, gearboxTorque, gearRatio, inertia, ironMass, lockShare, ratingBasis, rollingResistanceOf, statedFlywheelSpeed, tyreGrip, tyreRadius, wheelbase,
  wheelInertia, wheelTorque,
} from './quantities.ts'

export const clutchBasis = field('driveline.clutch.basis', ratingBasis, 'maker')
export const clutchRating = field('driveline.clutch.rating', clutchTorque, 550, { label: 'Clutch rating' })
export const clutchClamp = field('driveline.clutch.clamp', clampLoad, 9000, { label: 'Clamp load when new' })
export const facingOuter = field('driveline.clutch.facingOuter', facingOuterDiameter, mm(240))
export const facingInner = field('driveline.clutch.facingInner', facingInnerDiameter, mm(155))
export const plates = field('driveline.clutch.plates', drivenPlates, 1)
export const frictionFlywheelSide = field('driveline.clutch.frictionFlywheelSide', facingFriction, 0.3, { label: 'Friction on the flywheel side' })
export const frictionCoverSide = field('driveline.clutch.frictionCoverSide', facingFriction, 0.3, { label: 'Friction on the cover side' })
export const clampLostToWear = field('driveline.clutch.lostToWear', clampLoss, percent(5), { label: 'Clamp lost to wear' })
export const clampLostToSpeed = field('driveline.clutch.lostToSpeed', clampLoss, percent(5), { label: 'Clamp lost to speed' })
export const clampLossSpeed = field('driveline.clutch.lossSpeed', shaftSpeed, rpm(8000), { label: 'Speed of that loss' })
export const clutchIron = field('driveline.clutch.iron', ironMass, 5, { label: 'Iron rubbed on by the facings' })

export const shaftInertia = field('driveline.shaftInertia', inertia, 0.06, { label: 'Inertia of shaft, rotors and pulleys' })
export const flywheelInertia = field('driveline.flywheelInertia', inertia, 0.09, { label: 'Inertia of the flywheel' })
export const clutchInertia = field('driveline.clutchInertia', inertia, 0.05, { label: 'Inertia of the clutch' })
export const flywheelSpeed = field('driveline.flywheelSpeed', statedFlywheelSpeed, null)

export const firstGear = field('driveline.gear.first', gearRatio, 3.4, { label: 'First gear' })
export const secondGear = field('driveline.gear.second', gearRatio, 2.05, { label: 'Second gear' })
export const thirdGear = field('driveline.gear.third', gearRatio, 1.4, { label: 'Third gear' })
export const fourthGear = field('driveline.gear.fourth', gearRatio, 1, { label: 'Fourth gear' })
export const fifthGear = field('driveline.gear.fifth', gearRatio, 0.75, { label: 'Fifth gear' })
export const sixthGear = field('driveline.gear.sixth', gearRatio, null, { label: 'Sixth gear' })
export const axleRatio = field('driveline.finalDrive', finalDrive, 4.1)
export const efficiency = field('driveline.efficiency', driveEfficiency, percent(92))
export const lock = field('driveline.lockShare', lockShare, percent(65))
export const gearboxRating = field('driveline.gearboxRating', gearboxTorque, null, { label: 'Gearbox rating, input torque' })
export const differentialRating = field('driveline.differentialRating', axleTorque, null, { label: 'Differential rating, output torque' })
export const halfShaftRating = field('driveline.halfShaftRating', wheelTorque, null, { label: 'Half-shaft rating' })

export const mass = field('car.mass', carMass, 1300)
export const drivenAxle = field('car.drivenAxleMass', axleMass, 650)
export const rollingRadius = field('car.tyreRadius', tyreRadius, mm(310))
export const grip = field('car.tyreGrip', tyreGrip, 1)
export const centre = field('car.centreHeight', centreHeight, mm(480))
export const base = field('car.wheelbase', wheelbase, mm(2450))
export const dragArea = field('car.dragArea', dragAreaOf, 0.68)
export const rollingResistance = field('car.rollingResistance', rollingResistanceOf, 0.015)
export const wheels = field('car.wheelInertia', wheelInertia, 4)
