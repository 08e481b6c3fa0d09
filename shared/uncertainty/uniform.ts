const factors = [11600, 47003, 23000, 33000] as const
const moduli = [2147483579, 2147483543, 2147483423, 2147483123] as const

/** The next number of the draw: evenly spread between 0 and 1, neither of them ever given. */
export type Uniform = () => number

/**
 * Evenly spread numbers by four congruential generators whose fractions are added: period about 2^121. Every product stays below 2^53, so
 * that plain numbers carry it exactly.
 * Source: B. A. Wichmann, I. D. Hill, Generating good pseudo-random numbers, Computational Statistics and Data Analysis 51 (2006) 1614;
 * recommended by JCGM 101:2008, annex C.3.
 * @param seed a whole number; the four generators start from successive terms of Park and Miller's (Communications of the ACM 31 (1988) 1192)
 * @param skip how many numbers to leave out: part of a draw can be made by itself, and is the same as in the whole
 */
export function uniform(seed: number, skip = 0): Uniform {
  const state = startOf(seed).map((start, j) => (skip === 0 ? start : jumped(start, factors[j]!, moduli[j]!, skip)))
  return () => {
    let sum = 0
    for (let j = 0; j < 4; j++) {
      state[j] = (state[j]! * factors[j]!) % moduli[j]!
      sum += state[j]! / moduli[j]!
    }
    const part = sum - Math.floor(sum)
    return part > 0 ? part : Number.EPSILON
  }
}

function startOf(seed: number): number[] {
  let term = 1 + (Math.abs(Math.trunc(seed)) % 2147483645)
  return moduli.map((modulus) => {
    term = (term * 48271) % 2147483647
    return 1 + (term % (modulus - 1))
  })
}

/** Many steps of one generator at once: its factor raised to their number. */
function jumped(start: number, factor: number, modulus: number, steps: number): number {
  const m = BigInt(modulus)
  let power = BigInt(factor)
  let product = BigInt(start)
  for (let left = steps; left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) product = (product * power) % m
    power = (power * power) % m
  }
  return Number(product)
}
