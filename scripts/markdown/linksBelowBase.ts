import { defineHastPlugin } from 'satteri'

/** Lets prose link to `/articles/one-oil-two-jobs/` wherever on its host the site lives: the base is put before it here. */
export const linksBelowBase = (base: string) => defineHastPlugin({
  name: 'links-below-base',
  element: {
    filter: ['a'],
    visit(link, context) {
      const { href } = link.properties
      if (typeof href === 'string' && /^\/(?!\/)/.test(href)) context.setProperty(link, 'href', base + href.slice(1))
    },
  },
})
