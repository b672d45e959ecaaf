import { HighlightStyle, StreamLanguage } from '@codemirror/language';
import { tags } from '@lezer/highlight';

// A number as on a ruler or a scale, with its unit.
const number = String.raw`[+\-−]?(?:\d+(?:\.\d+)?(?:[-−]\d+)?(?:[/⁄]\d+)?[¼-¾⅐-⅞]?|[¼-¾⅐-⅞])`;
const unit = String.raw`(?:\s?(?:mm|cm|in|ft|yd|m)(?![\p{L}\p{N}])|["″](?!\p{L}))`;
const length = new RegExp(`^${number}${unit}?(?![\\p{L}\\p{N}])`, 'u');

// Highlighting: words are classified by position, so no list of words has to be kept in step with the language.

export const cardLanguage = StreamLanguage.define({
  name: 'card',
  startState: () => ({ goesOn: false, comma: false, first: true, after: '', role: false }),
  copyState: (state) => ({ ...state }),
  token(stream, state) {
    if (stream.sol()) {
      state.goesOn = state.comma;
      state.comma = false;
      if (!state.goesOn) Object.assign(state, { first: true, after: '', role: false });
    }
    if (stream.eatSpace()) return null;
    const begins = stream.string.slice(0, stream.pos).trim() === '';
    const apart = begins || /\s/.test(stream.string[stream.pos - 1]);
    if (stream.match(/^#(?:[0-9a-f]{6}|[0-9a-f]{3})(?![\p{L}\p{N}])/iu)) return 'color';
    if (stream.peek() === '#' && (begins || (apart && /^#(?:\s|$)/.test(stream.string.slice(stream.pos))))) {
      // A comment line in between does not end a continued line.
      if (begins) state.comma = state.goesOn;
      stream.skipToEnd();
      return 'comment';
    }
    state.comma = false;
    if (stream.match(/^["“”](?:[^"“”]|"")*["“”]?/)) return 'string';
    if (stream.eat(',')) {
      state.comma = true;
      Object.assign(state, { first: true, after: ',', role: false });
      return 'punctuation';
    }
    if (stream.eat(':')) {
      state.first = true;
      return 'punctuation';
    }
    if (stream.match(length)) return 'number';
    if (!stream.match(/^[\p{L}\p{N}_'’-]+/u)) {
      stream.next();
      return null;
    }
    const word = stream.current();
    const { after } = state;
    state.after = word.toLowerCase();
    if (/^\s*:/.test(stream.string.slice(stream.pos))) return 'variableName.definition';
    if (after === 'of' || after === 'ink') return 'variableName';
    if (state.after === 'of' || state.after === 'ink') {
      state.first = false;
      return 'propertyName';
    }
    if (!state.first) return null;
    state.first = false;
    if (state.role) return 'variableName';
    if (after === ',') return 'propertyName';
    state.role = state.after === 'role';
    return 'keyword';
  },
});

export const colours = HighlightStyle.define([
  { tag: tags.comment, color: 'var(--quiet, light-dark(#5c636b, #a3a8ae))', fontStyle: 'italic' },
  { tag: tags.string, color: 'var(--string, light-dark(#7a3e00, #f0b98a))' },
  { tag: [tags.number, tags.color], color: 'var(--number, light-dark(#075e6b, #7fd3e0))' },
  { tag: tags.keyword, color: 'var(--word, light-dark(#1a4f9c, #9cc4ff))', fontWeight: '600' },
  { tag: tags.propertyName, color: 'var(--word, light-dark(#1a4f9c, #9cc4ff))' },
  { tag: tags.definition(tags.variableName), color: 'var(--name, light-dark(#6b2a86, #dcaef0))', fontWeight: '600' },
  { tag: tags.variableName, color: 'var(--name, light-dark(#6b2a86, #dcaef0))' },
]);
