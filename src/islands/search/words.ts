/** The words people type, and what these pages call it: one data file, `content/search/words.json`. */
export type Words = {
  /** Words that stand in every question or in none, apart by blanks. */
  readonly filler: string
  /** The other side of the Atlantic's spelling, and the one used here. */
  readonly spelt: Readonly<Record<string, string>>
  /** A pattern of what is typed, such as `200:1`, and what it is about. */
  readonly patterns: readonly (readonly [pattern: string, about: string])[]
  /** What people say, one to three words, and what it is called here. */
  readonly called: Readonly<Record<string, string>>
}

/** A word without case, accents and endings: what is left is compared. */
export function stem(word: string, spelt: Words['spelt'] = {}): string {
  const plain = word.toLowerCase().normalize('NFKD').replace(/\p{M}/gu, '').replace(/[’']s?$/, '')
  const ours = (spelt[plain] ?? plain).replace(/iz(e[ds]?|ing|ation)$/, 'is$1')
  if (ours.length < 4 || /\d/.test(ours)) return ours
  const single = ours.replace(/ies$/, 'y').replace(/([^su])s$/, '$1')
  const bare = single.length > 5 ? single.replace(/(ing|ed)$/, '') : single
  return bare.replace(/([bdglmnprt])\1$/, '$1').replace(/e$/, '')
}

/** The words of a text; what is written together with `:`, `/`, `.` or `-` stays together and is given apart as well. */
export function split(text: string): string[] {
  const whole = text.toLowerCase().replace(/[’]/g, '\'').split(/[^\p{L}\p{N}.:/'-]+/u).map((word) => word.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '')).filter((word) => word !== '')
  return whole
}
/** `tip-in` is found as `tip in`, and as `tipin`. */
export const parts = (word: string): string[] => (/[/-]/.test(word) && !/\d/.test(word) ? word.split(/[/-]/).filter((part) => part !== '') : [word])
