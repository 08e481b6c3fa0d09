/** What one stage of the tests came to. */
export type Tally = { passed: number; failed: number }

/** The outcome of a stage that either holds as a whole or does not. */
export const whole = (holds: boolean): Tally => ({ passed: holds ? 1 : 0, failed: holds ? 0 : 1 })

/** A run that ended badly without naming a failed test still failed. */
export const orFailed = (tally: Tally, exitCode: number): Tally =>
  exitCode !== 0 && tally.failed === 0 ? { ...tally, failed: 1 } : tally

export const sum = (tallies: readonly Tally[]): Tally => ({
  passed: tallies.reduce((total, { passed }) => total + passed, 0),
  failed: tallies.reduce((total, { failed }) => total + failed, 0),
})
