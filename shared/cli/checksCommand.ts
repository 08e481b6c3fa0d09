import { runCheck } from '../checks/runCheck.ts'
import { type Workshop } from './workshop.ts'

/** Runs every published case: counts, then each with its source, what is expected, what is computed and the difference. */
export function checksCommand(shop: Workshop) {
  const cases = shop.registry.checks.map((check) => {
    const { compared, passes } = runCheck(check, shop.registry)
    return { id: check.id, of: check.of, source: check.source, confidence: check.confidence, passes, ...(check.differs !== undefined && { differs: check.differs }), compared }
  })
  const agree = cases.filter((c) => c.passes).length
  const explained = cases.filter((c) => !c.passes && c.differs !== undefined).length
  return { total: cases.length, agree, differExplained: explained, differ: cases.length - agree - explained, cases }
}
