import { EditorView } from '@codemirror/view';

// Theme: the page sets the custom properties, for dark and for light

const ink = 'var(--ink, light-dark(#1f2328, #e8e6e1))';
const paper = 'var(--paper, light-dark(#ffffff, #1c1e21))';
const line = 'var(--line, light-dark(#868c93, #7d838a))';
const accent = 'var(--accent, light-dark(#0b5cad, #7db8f5))';
const quiet = 'var(--quiet, light-dark(#5c636b, #a3a8ae))';
const mono = 'var(--mono, ui-monospace, Consolas, Menlo, monospace)';
const severityColours = {
  error: 'var(--error, light-dark(#b3261e, #ff8f87))',
  warning: 'var(--warning, light-dark(#8a5000, #f2b45c))',
  note: 'var(--note, light-dark(#1d5fa6, #8fc1f7))',
};
// Every colour of the text keeps a contrast of 4.5 : 1 up to a share of 14, the ink itself up to 30.
const tint = (share) => `color-mix(in srgb, ${accent} ${share}%, ${paper})`;
const underline = (severity, style) => ({
  backgroundImage: 'none',
  paddingBottom: '0',
  textDecoration: `underline ${style} ${severityColours[severity]} 2px`,
  textDecorationSkipInk: 'none',
  textUnderlineOffset: '3px',
});
const button = {
  font: 'inherit',
  color: ink,
  backgroundColor: paper,
  backgroundImage: 'none',
  border: `1px solid ${quiet}`,
  borderRadius: '4px',
  padding: '0.15em 0.6em',
  cursor: 'pointer',
};
const focused = { outline: `2px solid ${accent}`, outlineOffset: '1px' };

export const theme = EditorView.theme({
  '&': { height: '100%', color: ink, backgroundColor: paper },
  '&.cm-focused': { outline: 'none' },
  // Drawn above the gutters, which would cover an outline.
  '&.cm-focused::after': { content: "''", position: 'absolute', inset: '0', border: `2px solid ${accent}`, pointerEvents: 'none',
    zIndex: '250' },
  '.cm-scroller': { fontFamily: mono, lineHeight: '1.5' },
  '.cm-content': { caretColor: ink, padding: '0.4em 0' },
  '.cm-gutters': { color: quiet, backgroundColor: paper, borderRight: `1px solid ${line}` },
  '.cm-activeLine': { backgroundColor: tint(6) },
  '.cm-activeLineGutter': { color: ink, backgroundColor: tint(6) },
  // Padding, not a transparent border, reserves the room of the bar: high contrast modes paint every border.
  '.cm-line': { paddingLeft: '0.6em' },
  '.cm-line.cm-marked': { borderLeft: `0.3em solid ${accent}`, paddingLeft: '0.3em', backgroundColor: `var(--chosen, ${tint(14)})` },
  '.cm-findings .cm-gutterElement': { cursor: 'pointer', padding: '0 0.2em', display: 'flex', alignItems: 'flex-start' },
  '.cm-sign': { width: '1em', height: '1em', flex: 'none', marginTop: '0.25em' },
  '.cm-sign-error': { fill: severityColours.error },
  '.cm-sign-warning': { fill: severityColours.warning },
  '.cm-sign-note': { fill: severityColours.note },
  '.cm-lintRange-error': underline('error', 'wavy'),
  '.cm-lintRange-warning': underline('warning', 'dashed'),
  '.cm-lintRange-info': underline('note', 'dotted'),
  '.cm-lintRange-active': { backgroundColor: tint(14) },
  '.cm-lintPoint::after': { display: 'none' },
  '.cm-tooltip, .cm-panels': { color: ink, backgroundColor: paper },
  '.cm-tooltip': { border: `1px solid ${line}`, borderRadius: '4px', maxWidth: 'min(40em, 90vw)' },
  '.cm-panels-top': { borderBottom: `1px solid ${line}` },
  '.cm-panels-bottom': { borderTop: `1px solid ${line}` },
  '.cm-panels button, .cm-tooltip button, .cm-button': button,
  '.cm-panels button:focus-visible, .cm-tooltip button:focus-visible, .cm-panels input:focus-visible': focused,
  '.cm-textfield': { boxSizing: 'border-box', maxWidth: '100%', font: 'inherit', color: ink, backgroundColor: paper,
    border: `1px solid ${quiet}`, padding: '0.15em 0.4em' },
  '.cm-panel.cm-search': { font: 'inherit', padding: '0.4em 2em 0.4em 0.5em' },
  '.cm-textfield::placeholder': { color: quiet, opacity: '1' },
  '.cm-panel.cm-search label': { font: 'inherit' },
  '.cm-panel.cm-search input[type=checkbox]': { width: '1em', height: '1em', verticalAlign: '-0.1em', accentColor: accent },
  // Regular expressions and multiple selections are for programmers.
  '.cm-panel.cm-search label:has([name=re]), .cm-panel.cm-search label:has([name=word]), .cm-panel.cm-search button[name=select]': {
    display: 'none' },
  '.cm-panel.cm-search [name=close]': { ...button, position: 'absolute', top: '0.3em', right: '0.3em', padding: '0 0.4em' },
  '.cm-searchMatch': { backgroundColor: 'transparent', outline: `1px solid ${accent}` },
  '.cm-searchMatch-selected': { outlineWidth: '2px', backgroundColor: tint(14) },
  '.cm-diagnostic': { borderLeft: 'none', padding: '0.4em 0.6em', marginLeft: '0' },
  '.cm-diagnosticText': { display: 'block', position: 'relative', paddingLeft: '1.5em' },
  '.cm-diagnosticText .cm-sign': { position: 'absolute', left: '0' },
  '.cm-message, .cm-hint': { display: 'block' },
  '.cm-hint': { color: quiet },
  '.cm-diagnosticAction': { ...button, margin: '0.4em 0 0 1.5em' },
  '.cm-tooltip.cm-tooltip-autocomplete > ul': { fontFamily: mono, maxHeight: '22em' },
  '.cm-tooltip.cm-tooltip-autocomplete li:has(.cm-sample) .cm-completionLabel': { display: 'inline-block', minWidth: '11ch' },
  '.cm-sample': { height: '1.7em', width: '13em', marginLeft: '0.8em', verticalAlign: 'middle', fill: 'currentColor' },
  '.cm-pictured': { display: 'inline-block', width: '2em', height: '2em', marginRight: '0.6em', verticalAlign: 'middle' },
  '.cm-pictured img': { width: '100%', height: '100%', objectFit: 'contain' },
  '.cm-explained': { padding: '0.4em 0.7em', maxWidth: '28em' },
  '.cm-explained p': { margin: '0.2em 0' },
  '.cm-explained code': { fontFamily: mono },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected]': { color: ink, backgroundColor: tint(20), outline: `1px solid ${accent}` },
});
