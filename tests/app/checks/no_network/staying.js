// Tries to reach a port of this machine in every way that leaves the page where it is; counts them.
const port = arguments[0];
const to = (way) => `http://127.0.0.1:${port}/${way}`;
const put = (tag, set, place = document.body) => {
  const element = document.createElement(tag);
  Object.assign(element, set);
  place.append(element);
  return element;
};
const style = (rule) => {
  put('style', { textContent: rule }, document.head);
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(rule);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
};
const hint = (rel, more = {}) =>
  put('link', { rel, href: to(rel === 'stylesheet' ? 'style' : rel), ...more }, document.head);

const ways = [
  () => fetch(to('fetch'), { mode: 'no-cors' }).catch(() => {}),
  () => fetch(to('post'), { method: 'POST', mode: 'no-cors', body: 'x' }).catch(() => {}),
  () => {
    const request = new XMLHttpRequest();
    request.open('GET', to('xhr'));
    request.send();
  },
  () => put('img', { src: to('image') }),
  () => style(`body { background-image: url(${to('background')}); }`),
  () => document.body.style.setProperty('border-image', `url(${to('border')}) 1`),
  () => {
    style(`@font-face { font-family: away; src: url(${to('font')}); }`);
    new FontFace('gone', `url(${to('font')})`).load().catch(() => {});
  },
  () => hint('stylesheet'),
  () => hint('preconnect'),
  () => hint('prefetch'),
  () => hint('dns-prefetch'),
  () => hint('icon'),
  () => hint('manifest'),
  () => hint('preload', { as: 'image' }),
  () => hint('modulepreload'),
  () => put('iframe', { src: to('frame') }),
  () => put('object', { data: to('object') }),
  () => put('embed', { src: to('embed') }),
  () => put('script', { src: to('script') }),
  () => import(to('module')).catch(() => {}),
  () => put('video', { src: to('media'), preload: 'auto' }).load(),
  () => put('audio', { src: to('sound'), preload: 'auto' }).load(),
  () => navigator.sendBeacon(to('beacon'), 'x'),
  () => new EventSource(to('events')),
  () => new WebSocket(`ws://127.0.0.1:${port}/socket`),
  () => new Worker(to('worker')),
  () => new RTCPeerConnection({ iceServers: [{ urls: `stun:127.0.0.1:${port}` }] }),
  () => {
    const form = put('form', { action: to('framed'), target: put('iframe', { name: 'inner' }).name });
    form.submit();
  },
];
for (const way of ways) {
  try {
    way();
  } catch {
    // Refused on the spot: nothing was sent.
  }
}
return ways.length;
