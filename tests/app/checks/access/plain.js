// Takes away what axe cannot judge contrast on, so that it judges every word: the grain of the paper is a
// gradient, and the bar at the bottom lies over what is scrolled under it.
if (!window.isPlain) {
  window.isPlain = true;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`*, *::before, *::after { background-image: none !important; transition: none !important }
    .unstuck { position: static !important }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}
for (const element of document.querySelectorAll('body *')) {
  if (getComputedStyle(element).position === 'sticky') element.classList.add('unstuck');
}
