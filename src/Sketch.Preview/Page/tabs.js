// A row of tabs (WAI-ARIA Authoring Practices: arrow keys move and select, Tab moves into the panel).
import { button, element } from './elements.js';

export function makeTabs(row, panels, chosen) {
  let current = null;
  const made = new Map();

  function show(id) {
    current = id;
    for (const [key, { tab, panel }] of made) {
      const isCurrent = key === id;
      tab.setAttribute('aria-selected', String(isCurrent));
      tab.tabIndex = isCurrent ? 0 : -1;
      panel.hidden = !isCurrent;
    }
    chosen(id);
  }

  row.addEventListener('keydown', (event) => {
    const seen = [...made.entries()].filter(([, { tab }]) => !tab.hidden);
    const at = seen.findIndex(([id]) => id === current);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: seen.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    const [id, { tab }] = seen[(to + seen.length) % seen.length];
    show(id);
    tab.focus();
  });

  return {
    current: () => current,
    show,
    add(id, title) {
      const tab = button(title, () => show(id), { role: 'tab', id: `tab-${id}`, 'aria-controls': `panel-${id}` });
      const panel = element('div', { role: 'tabpanel', id: `panel-${id}`, 'aria-labelledby': `tab-${id}`, hidden: true, tabIndex: -1 });
      made.set(id, { tab, panel });
      row.append(tab);
      panels.append(panel);
      return panel;
    },
    /** Shows only some tabs; when the current one is not among them, the first of them is selected. */
    offer(ids) {
      for (const [id, { tab }] of made) tab.hidden = !ids.includes(id);
      if (!ids.includes(current)) show(ids[0]);
    },
  };
}
