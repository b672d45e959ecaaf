// A list of many buttons is one tab stop; arrow keys move in it (WAI-ARIA Authoring Practices, managing focus by a roving tabindex).

/** Makes the buttons of a list reachable by arrow keys. Call `renewed` of the result when the buttons of the list have changed. */
export function moveByArrows(list) {
  const buttons = () => [...list.querySelectorAll('button')];

  function stopAt(one) {
    for (const button of buttons()) button.tabIndex = button === one ? 0 : -1;
  }

  list.addEventListener('keydown', (event) => {
    const all = buttons();
    const at = all.indexOf(event.target);
    const to = { ArrowRight: at + 1, ArrowDown: at + 1, ArrowLeft: at - 1, ArrowUp: at - 1, Home: 0, End: all.length - 1 }[event.key];
    if (at < 0 || to === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    all[Math.min(Math.max(to, 0), all.length - 1)].focus();
  });
  list.addEventListener('focusin', (event) => { if (buttons().includes(event.target)) stopAt(event.target); });

  return {
    renewed() {
      const all = buttons();
      stopAt(all.find((b) => b.getAttribute('aria-pressed') === 'true') ?? all[0]);
    },
  };
}
