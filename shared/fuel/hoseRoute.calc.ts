import { calculation, free, NoAnswer } from '../calculation/calculation.ts'
import { role } from '../quantity/quantity.ts'
import { deg, mm, percent } from '../quantity/si.ts'
import { bendReserve } from './bendReserve.ts'
import { hoseBendOf } from './hoseBendOf.ts'
import { bendRadius, bendReserveOf, dashNumber, hoseKind, hoseSlack, lineLength, turnedAngle } from './quantities.ts'
import { routedLengthOf } from './routedLengthOf.ts'

export default calculation({
  id: 'hose-route',
  title: 'Bend radius and length of a hose',
  theme: 'fuel',
  asks: 'Does this bend spare the hose, and how long must it be cut?',
  article: 'hoses-and-rails-series-or-parallel',
  cautions: ['fuel-vapour', 'pressurised-fuel', 'model-only'],
  in: {
    dash: free(dashNumber, 6), hose: free(hoseKind, 'rubber'), stated: free(bendRadius, mm(75), 'Least radius stated by its maker, other hose'), radius: free(bendRadius, mm(130), 'Tightest bend on the route'),
    straight: free(lineLength, 3.2, 'Straight parts, summed'), turned: free(turnedAngle, deg(360), 'Bends, summed'), slack: free(hoseSlack, percent(4)),
  },
  out: { least: role(bendRadius, 'r_min', 'Least radius of the hose'), reserve: bendReserveOf, length: role(lineLength, 'l', 'Length to cut') },
  curve: ['radius', 'length'],
  answer({ dash, hose, stated, radius, straight, turned, slack }) {
    const least = hose === 'rubber' ? hoseBendOf({ dash, hose }) : stated
    if (Number.isNaN(least)) throw new NoAnswer('hose-route', 'There is no hose of this dash number: 3, 4, 5, 6, 8, 10, 12, 16, 20, 24 and 32 are sizes.')
    return { least, reserve: bendReserve({ radius, least }), length: routedLengthOf({ straight, turned, radius, slack }) }
  },
  says: ({ reserve }) => reserve < 0
    ? 'The bend of {radius} is tighter than the {least} this hose allows: it kinks or collapses. A bent fitting takes the turn instead. Cut {length} once it fits.'
    : 'The bend of {radius} spares the hose, which allows {least}. Cut {length}: so much that pressure may shorten it by {slack}.',
  leavesOut: 'Movement of the engine, twist between fittings that do not lie in one plane, and the straight that a crimped end needs before a bend may begin.',
})
