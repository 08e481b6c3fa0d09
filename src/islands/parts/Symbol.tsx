/** A symbol as quantities declare it, `p_m`, with what follows the underscore set low. */
export function Symbol({ of }: { of: string }) {
  const [head, ...below] = of.split('_')
  return <i class="symbol">{head}{below.length > 0 && <sub>{below.join(',')}</sub>}</i>
}
