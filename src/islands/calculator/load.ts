import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'

/**
 * Loads one calculation with the formulas it calls and nothing else: by the file it lies in, `fuel/injectorDuty`, or, as a built page
 * names it, by the file of the browser's code, `injectorDuty.calc.1a2b3c4d.js`, which lies beside this one.
 */
export async function loadCalculation(file: string): Promise<AnyCalculation> {
  const load = file.endsWith('.js') ? () => import(/* @vite-ignore */ `./${file}`) : await (await import('./listed.ts')).listed(file)
  return ((await load()) as { default: AnyCalculation }).default
}
