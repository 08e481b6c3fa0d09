/** Oil grades as SAE J300 names them: a winter grade, a hot grade, or both. */
const winter = [0, 5, 10, 15, 20, 25]
const hot = [8, 12, 16, 20, 30, 40, 50, 60]

/** Reads "10w40", "SAE 10W-40", "30", "20W" into the standard's spelling. */
export function readGrade(typed: string): { readonly ok: true; readonly value: string } | { readonly ok: false; readonly says: string } {
  const text = typed.slice(0, 40).toUpperCase().replace(/^\s*SAE\s*/, '').replace(/\s+/g, '').replace(/[–−]/g, '-')
  const both = /^(\d{1,2})W(?:[-/]?(\d{1,2}))?$/.exec(text)
  const single = /^(\d{1,2})$/.exec(text)
  const cold = both ? Number(both[1]) : null
  const warm = both?.[2] !== undefined ? Number(both[2]) : single ? Number(single[1]) : null
  if (cold === null && warm === null) return { ok: false, says: `“${typed.slice(0, 40)}” is not an oil grade. Write it as on the can: 10W-40, 20W-50 or 30.` }
  if (cold !== null && !winter.includes(cold)) return { ok: false, says: `There is no winter grade ${cold}W: 0W, 5W, 10W, 15W, 20W, 25W.` }
  if (warm !== null && !hot.includes(warm)) return { ok: false, says: `There is no grade ${warm}: 8, 12, 16, 20, 30, 40, 50, 60.` }
  return { ok: true, value: [cold === null ? '' : `${cold}W`, warm ?? ''].filter((x) => x !== '').join('-') }
}
/** The parts of a grade in the standard's spelling. */
export const gradeParts = (grade: string): { readonly cold: number | null; readonly hot: number | null } => {
  const match = /^(?:(\d+)W-?)?(\d+)?$/.exec(grade)
  return { cold: match?.[1] === undefined ? null : Number(match[1]), hot: match?.[2] === undefined ? null : Number(match[2]) }
}
