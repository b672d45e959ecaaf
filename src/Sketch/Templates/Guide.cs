using System.Collections.Immutable;

namespace Sketch.Templates;

/// <summary>A placement guide of one face, ready for its page.</summary>
/// <param name="Title">What it shows, in plain words.</param>
/// <param name="Ways">Its possible arrangements, each no larger than a page; empty if it takes whole pages.</param>
/// <param name="Pages">Its pages, if it takes whole ones.</param>
internal sealed record Guide(string Title, ImmutableArray<TemplateBlock> Ways, ImmutableArray<TemplateSheet> Pages);
