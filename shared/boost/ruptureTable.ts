import { degC, MPa } from '../quantity/si.ts'

/** Temperatures at which the table gives a stress. */
export const ruptureTemperatures = [degC(538), degC(650), degC(815)] as const

/**
 * Stress, Pa, that breaks a stainless steel after 1,000 hours, by type, at those temperatures; annealed, typical and no minimum. The
 * source gives thousands of pounds per square inch, to the nearest thousand. Source: high-temperature-stainless.
 */
export const ruptureStress = {
  'stainless-304': ksi(37, 17, 4),
  'stainless-347': ksi(49, 23, 4),
  'stainless-310': ksi(32, 18, 6),
  'ferritic-430': ksi(18, 5, 1),
} as const

function ksi(...of: readonly number[]): readonly number[] { return of.map((value) => MPa(value * 6.894757)) }
