/** How what is not known of a number is spread about it. */
export type Form = 'normal' | 'rectangular' | 'triangular'
/** What a number may be out by: half of the interval that holds it, SI. A normal one holds it 95 times in 100, the others always. */
export type Spread = { readonly form: Form; readonly half: number }

/** Half of a normal distribution's 95 % interval over its standard deviation. */
export const normal95 = 1.959963984540054

/** Standard uncertainty of a spread. Source: JCGM 100:2008, 4.3.4 (normal), 4.3.7 (rectangular), 4.3.9 (triangular). */
export const uncertaintyOf = ({ form, half }: Spread): number => half / (form === 'normal' ? normal95 : Math.sqrt(form === 'rectangular' ? 3 : 6))

/**
 * One draw from a spread, from two evenly spread numbers: every input takes two, whatever its form, so that each has its own place in the draw.
 * Source: JCGM 101:2008, 6.4.2 (rectangular), 6.4.5 (the sum of two rectangular ones is triangular), C.4 (Box and Muller, normal).
 */
export function draw({ form, half }: Spread, r1: number, r2: number): number {
  if (form === 'rectangular') return half * (2 * r1 - 1)
  if (form === 'triangular') return half * (r1 + r2 - 1)
  return (half / normal95) * Math.sqrt(-2 * Math.log(r1)) * Math.cos(2 * Math.PI * r2)
}
