import { defineHastPlugin } from 'satteri'

/**
 * Says how a table column is aligned by a class, `left`, `center` or `right`, where Markdown would write a style
 * attribute: the content security policy refuses those.
 */
export const alignByClass = defineHastPlugin({
  name: 'align-by-class',
  element: {
    filter: ['th', 'td'],
    visit(cell, context) {
      const align = /text-align:\s*(\w+)/.exec(String(cell.properties.style ?? ''))?.[1]
      if (!align) return
      context.setProperty(cell, 'style', null)
      context.setProperty(cell, 'className', [align])
    },
  },
})
