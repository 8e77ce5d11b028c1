// What axe finds wrong on the page, and what it cannot judge about contrast: that has not been shown to be
// readable. One line for each.
const done = arguments[0];
const options = {
  rules: { 'target-size': { enabled: true } },
  resultTypes: ['violations', 'incomplete'],
};
window.axe.run(document, options).then(
  ({ violations, incomplete, passes }) => {
    // Nor can it see what the letters of a drawing stand on: ink or pencil on paper, as other letters are.
    const isInDrawing = ({ html }) => /^<(text|tspan)\b/.test(html);
    const unjudged = incomplete
      .filter(({ id }) => id === 'color-contrast')
      .map(({ id, nodes }) => ({ id, nodes: nodes.filter((node) => !isInDrawing(node)) }));
    const found = [...violations, ...unjudged].flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
    );
    done({ found, passed: passes.length });
  },
  (error) => done({ found: [`axe failed: ${error}`], passed: 0 }),
);
