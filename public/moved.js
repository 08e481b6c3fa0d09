// Leads on from a page that has moved, and takes the place and the numbers after # along.
{
  const { href } = document.querySelector('link[rel=canonical]')
  location.replace(href.includes('#') ? href : href + location.search + location.hash)
}
