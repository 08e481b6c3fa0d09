/** Independent parts of an uncertainty put together: the root of the sum of their squares. Source: JCGM 100:2008, 5.1.2. */
export function rootSum(parts: readonly number[]): number {
  let sum = 0
  for (const part of parts) sum += part * part
  return Math.sqrt(sum)
}
