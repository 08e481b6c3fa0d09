/** The one text that a link carries, in characters. */
export const longestNote = 200

/** A note as plain text on one line: no control characters, and none that turn the direction of what stands beside it. */
export const plainNote = (text: string): string => text.replace(/[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu, ' ').replace(/\s+/g, ' ').trim()
