import { defineHastPlugin } from 'satteri'

const pin = /\s*\[#([a-z][a-z0-9-]*)\]$/

/**
 * Lets a heading keep the id under which it was published when its words change: `## Oil when it is cold [#cold-oil]`. Without a pin the id
 * comes from the words.
 */
export const pinnedIds = defineHastPlugin({
  name: 'pinned-ids',
  element: {
    filter: ['h2', 'h3'],
    visit(heading, context) {
      const id = pin.exec(context.textContent(heading))?.[1]
      const last = heading.children.at(-1)
      if (!id || last?.type !== 'text') return
      context.setProperty(heading, 'id', id)
      context.setProperty(last, 'value', last.value.replace(pin, ''))
    },
  },
})
