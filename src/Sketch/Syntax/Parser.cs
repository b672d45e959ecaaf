using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>
/// Parses a text into a tree of lines. The first word of a clause decides what it is, so the parser never backtracks and continues after
/// a mistake at the next comma; one run reports every mistake.
/// </summary>
public sealed class Parser
{
    private readonly ParseState _file;
    private readonly IReadOnlyList<LogicalLine> _lines;
    private int _next;
    private bool _depthReported;
    private ImmutableHashSet<Unit> _bareUnits = [];

    private Parser(ParseState file, IReadOnlyList<LogicalLine> lines) => (_file, _lines) = (file, lines);

    /// <summary>Parses a text. Mistakes go to <paramref name="findings"/>; the tree holds what could be read.</summary>
    public static FileSyntax Parse(SourceText source, FindingBag findings)
    {
        if (source.Content.Length > Limits.Characters)
        {
            findings.Add(FindingCatalogue.Unreadable, new(source, new(0, 0)),
                $"The file has {source.Content.Length:N0} characters, more than {Limits.Characters:N0}.",
                "A card has a few dozen lines. Is this the right file?");
            return new(source, [], []);
        }

        var (lines, trailing) = Lexer.Read(source, findings);
        return new Parser(new(source, findings, lines), lines).ParseFile(trailing);
    }

    private FileSyntax ParseFile(IReadOnlyList<string> trailing)
    {
        var lines = ImmutableArray.CreateBuilder<LineSyntax>();
        while (_next < _lines.Count)
        {
            lines.AddRange(ParseBlock(_lines[_next].Indent, 0));
        }

        return new(_file.Source, lines.ToImmutable(), trailing) { BareUnits = _bareUnits };
    }

    private ImmutableArray<LineSyntax> ParseBlock(int indent, int depth)
    {
        var block = ImmutableArray.CreateBuilder<LineSyntax>();
        while (_next < _lines.Count && _lines[_next].Indent >= indent)
        {
            var tokens = _lines[_next++];
            if (tokens.Indent > indent && depth < Limits.Depth)
            {
                Report(FindingCatalogue.BadIndent, tokens.Tokens[0].Span, "The indentation of this line matches no line above.",
                    "Indent it under the line that it lies on, or align it with its neighbours.");
            }

            var line = ParseLine(tokens);
            if (_next < _lines.Count && _lines[_next].Indent > tokens.Indent && !IsTooDeep(depth))
            {
                line = line with { Children = ParseBlock(_lines[_next].Indent, depth + 1) };
            }

            block.Add(line);
        }

        return block.ToImmutable();
    }

    private bool IsTooDeep(int depth)
    {
        if (depth < Limits.Depth)
        {
            return false;
        }

        if (!_depthReported)
        {
            _depthReported = true;
            Report(FindingCatalogue.TooDeep, _lines[_next].Tokens[0].Span, $"Lines lie on lines more than {Limits.Depth} deep here.",
                "Start again from a piece directly on a face.");
        }

        return true;
    }

    private LineSyntax ParseLine(LogicalLine tokens)
    {
        tokens = LineMistakes.WithoutNeedlessColon(tokens, _file);
        var cursor = new Cursor(_file, tokens);
        var line = LineHeads.ReadHead(cursor, tokens);
        if (line is BadLine && cursor.Position == 0)
        {
            return line;
        }

        var missingCommas = ImmutableArray.CreateBuilder<int>();
        var clauses = ClauseReader.ReadClauses(cursor, missingCommas, (line as PieceLine)?.Head);
        _bareUnits = _bareUnits.Union(cursor.BareUnits);
        return line with
        {
            Clauses = clauses,
            MissingCommas = missingCommas.ToImmutable(),
            NameTokens = [.. cursor.NameTokens],
            IsDamaged = cursor.EverFailed
        };
    }

    private void Report(FindingKind kind, TextSpan span, string message, string hint) =>
        _file.Findings.Add(kind, new(_file.Source, span), message, hint);
}
