/** Places for labels that fall from bottom to top, moved no more than it takes to stand `least` apart. */
export function apart(places: readonly number[], least: number): number[] {
  const at = [...places]
  for (let round = 0; round < 50; round++) {
    for (let i = 0; i + 1 < at.length; i++) {
      const short = least - (at[i]! - at[i + 1]!)
      if (short > 0) { at[i]! += short / 2; at[i + 1]! -= short / 2 }
    }
  }
  return at
}
