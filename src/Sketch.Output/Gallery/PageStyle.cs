namespace Sketch.Output.Gallery;

/// <summary>The style that the gallery and the handbook share: light or dark as the reader likes, black on white on paper.</summary>
internal static class PageStyle
{
    /// <summary>The rules.</summary>
    public const string Shared = """
        :root { color-scheme: light; --ink: #2b2926; --quiet: #5b564f; --ground: #fbfaf7; --raised: #fff; --rule: #d9d4ca;
            --link: #17507d; --fresh: #fbeab5; }
        @media screen and (prefers-color-scheme: dark) {
          :root { color-scheme: dark; --ink: #ece8e0; --quiet: #b9b2a6; --ground: #1d1c1a; --raised: #292724; --rule: #47433d;
              --link: #8fc4ee; --fresh: #57491c; }
        }
        * { box-sizing: border-box; }
        body { font: 1rem/1.5 system-ui, sans-serif; margin: 0 auto; max-width: 84rem; padding: 1.5rem 1rem 3rem;
            color: var(--ink); background: var(--ground); }
        h1 { font-size: 1.8rem; line-height: 1.2; margin: 0; }
        h2 { font-size: 1.35rem; line-height: 1.25; margin: 0 0 .5rem; }
        h3 { font-size: 1.05rem; margin: 1.25rem 0 .25rem; }
        a { color: var(--link); }
        nav ul { display: flex; flex-wrap: wrap; gap: .25rem 1rem; margin: .5rem 0; padding: 0; list-style: none; }
        code { font-family: ui-monospace, Consolas, Menlo, monospace; font-size: .9em; }
        pre { margin: 0; padding: .75rem 1rem; background: var(--raised); border: 1px solid var(--rule); border-radius: .3rem;
            font-size: .9rem; line-height: 1.45; white-space: pre-wrap; overflow-wrap: anywhere; tab-size: 2; }
        pre code { font-size: 1em; }
        .line { display: block; padding-left: 2em; text-indent: -2em; min-height: 1.45em; }
        figure { margin: 0; }
        figure img, figure svg { display: block; max-width: 100%; height: auto; background: #fff; box-shadow: 0 1px 4px #0005; }
        figcaption { font-size: .9rem; color: var(--quiet); margin-top: .35rem; }
        table { border-collapse: collapse; font-size: .9rem; }
        th, td { text-align: left; padding: .2rem .8rem .2rem 0; border-bottom: 1px solid var(--rule); vertical-align: top; }
        th.number, td.number { text-align: right; }
        @media print {
          body { background: none; max-width: none; padding: 0; }
          pre { background: none; }
          nav { display: none; }
          figure, pre, tr { break-inside: avoid; }
          figure img, figure svg { box-shadow: none; border: .2mm solid #ccc; }
        }
        """;
}
