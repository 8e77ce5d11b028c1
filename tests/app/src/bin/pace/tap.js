// Taps an answer, or Next after one is ticked, and measures until the next question is painted. What is
// tapped follows from a number, so that a run can be repeated.
const [number, done] = arguments;
const heading = () => document.querySelector('h1')?.textContent ?? '';
const painted = () => new Promise((then) => requestAnimationFrame(then));

// How long the core takes: each command is one request of the page.
if (!window.answers) {
  window.answers = [];
  const ask = window.fetch;
  window.fetch = async (...given) => {
    const answer = await ask(...given);
    if (String(given[0]).endsWith('/answer')) window.answers.push(performance.now());
    return answer;
  };
}

async function measure() {
  const cards = [...document.querySelectorAll('.card')];
  const next = document.querySelector('button[type=submit]');
  const ticks = cards.filter((card) => card.getAttribute('role') === 'checkbox');
  let tapped = cards[number % cards.length];
  if (next && ticks.length > 0) {
    // The first says that there is none, and asks for every place.
    ticks[1 + (number % (ticks.length - 1))].click();
    await painted();
    tapped = next;
  }
  const [before, from] = [heading(), location.hash];
  const changed = new Promise((then) => {
    const observer = new MutationObserver(() => {
      if (location.hash === from || ['', before].includes(heading())) return;
      observer.disconnect();
      then(performance.now());
    });
    observer.observe(document.body, { childList: true, subtree: true, characterData: true });
  });
  window.answers.length = 0;
  const start = performance.now();
  tapped.click();
  const inPage = await changed;
  // The first frame may have begun already: the second shows that what changed is painted.
  await painted();
  await painted();
  const end = performance.now();
  return {
    to: location.hash,
    answered: (window.answers[0] ?? NaN) - start,
    changed: inPage - start,
    painted: end - start,
  };
}

measure().then(done, (error) => done({ error: String(error) }));
