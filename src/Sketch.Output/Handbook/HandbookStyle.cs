namespace Sketch.Output.Handbook;

/// <summary>What a page of the handbook has beside the style of the gallery.</summary>
internal static class HandbookStyle
{
    /// <summary>The rules.</summary>
    public const string Rules = """

        main { max-width: 72rem; }
        main > p, main > ul, main > ol { max-width: 46rem; }
        h1 { margin: 1rem 0 .75rem; }
        h2 { margin: 2.25rem 0 .5rem; border-top: 1px solid var(--rule); padding-top: 1rem; }
        p, ul, ol { margin: .6rem 0; }
        li { margin: .2rem 0; }
        [aria-current] { font-weight: 600; }
        pre { max-width: 46rem; margin: .6rem 0; }
        mark { color: inherit; background: var(--fresh); }
        .numbered code { counter-reset: line; }
        .numbered .line { counter-increment: line; position: relative; padding-left: 4.5em; }
        .numbered .line::before { content: counter(line); position: absolute; left: 0; width: 1.7em; text-indent: 0; text-align: right;
            color: var(--link); }
        .example { display: grid; grid-template-columns: minmax(0, 1fr); gap: .75rem 1.5rem; margin: .75rem 0 1.25rem; }
        .example > pre { margin: 0; }
        .said { grid-column: 1; }
        .said > :first-child { margin-top: 0; }
        .said > :last-child { margin-bottom: 0; }
        .drawn { display: flex; flex-wrap: wrap; align-items: flex-start; gap: 1rem 1.5rem; }
        .wide .drawn { margin-top: .5rem; }
        .wide figure { max-width: 34rem; }
        @media (min-width: 56rem) {
          .example:not(.wide) { grid-template: auto 1fr / minmax(0, 46rem) auto; }
          .example:not(.wide) .drawn { grid-area: 1 / 2 / span 2; max-width: 41rem; }
        }
        table { margin: .6rem 0; }
        .cheat-sheet { columns: 21rem; column-gap: 2.5rem; max-width: none; }
        .cheat-sheet h1 { column-span: all; }
        .cheat-sheet h2 { font-size: 1.1rem; margin: 1rem 0 .25rem; padding: 0; border: 0; break-after: avoid; }
        .cheat-sheet ul { padding-left: 1.1rem; break-inside: avoid; }
        .cheat-sheet .example { display: block; margin: .5rem 0; break-inside: avoid; }
        .cheat-sheet .drawn { margin: .75rem 0; }
        .cheat-sheet figcaption { display: none; }
        @page { margin: 15mm; }
        @page sheet { margin: 8mm; }
        @media print {
          h2, h3 { break-after: avoid; }
          .example { break-inside: avoid; }
          .wide { break-inside: auto; }
          body { font-size: 10.5pt; }
          h2 { margin-top: 5mm; padding-top: 2mm; }
          pre { font-size: 8.5pt; }
          .example:not(.wide) { grid-template: auto 1fr / minmax(0, 1fr) auto; gap: 3mm 4mm; }
          .example:not(.wide) .drawn { grid-area: 1 / 2 / span 2; max-width: 90mm; gap: 3mm; }
          .example:not(.wide) svg { width: auto; height: 48mm; }
          .numbered .line { padding-left: 4.2em; }
          .cheat-sheet { page: sheet; columns: 3; column-gap: 6mm; font-size: 9pt; line-height: 1.22; }
          .cheat-sheet h1 { font-size: 15pt; margin: 0 0 1mm; }
          .cheat-sheet h2 { font-size: 10.5pt; margin: 2mm 0 .5mm; }
          .cheat-sheet :is(p, ul) { margin: .5mm 0; }
          .cheat-sheet li { margin: .2mm 0; }
          .cheat-sheet code { font-size: 8.4pt; }
          .cheat-sheet pre { font-size: 8.4pt; line-height: 1.25; padding: 1.5mm 2mm; }
          .cheat-sheet .line { min-height: 0; padding-left: 3mm; text-indent: -3mm; }
          .cheat-sheet .example { margin: 1mm 0; break-inside: auto; }
          .cheat-sheet .drawn { margin: 1.5mm 0 1mm; }
          .cheat-sheet .example:not(.wide) svg { width: auto; height: 46mm; }
        }
        """;
}
