using System.Text.Json.Serialization;
using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>A finding as written in JSON: lines and columns from 1, the end exclusive.</summary>
public record FindingRecord
{
    private readonly string? _replacement;

    /// <summary>Copies a finding; see <see cref="Of"/>.</summary>
    // Not public: the JSON source generator would take its parameters as input to deserialise, and generate code for their types.
    protected FindingRecord(Finding finding, string file)
    {
        var (start, end) = (finding.Location.Start, finding.Location.End);
        File = file;
        Code = finding.Code;
        Severity = FindingsText.NameOf(finding.Severity);
        Message = finding.Message;
        Hint = finding.Hint;
        (Line, Column) = (start.Line, start.Column);
        (EndLine, EndColumn) = (end.Line, end.Column);
        _replacement = finding.Replacement;
    }

    /// <summary>A finding as a record.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="file">The name of its file.</param>
    public static FindingRecord Of(Finding finding, string file) => new(finding, file);

    /// <summary>The name of the file.</summary>
    public string File { get; }

    /// <summary>The code, such as SK210.</summary>
    public string Code { get; }

    /// <summary>error, warning or note.</summary>
    public string Severity { get; }

    /// <summary>What is wrong.</summary>
    public string Message { get; }

    /// <summary>What to do; empty if there is nothing to add.</summary>
    public string Hint { get; }

    /// <summary>The line where it begins.</summary>
    public int Line { get; }

    /// <summary>The column where it begins.</summary>
    public int Column { get; }

    /// <summary>The line where it ends.</summary>
    public int EndLine { get; }

    /// <summary>The column after its end.</summary>
    public int EndColumn { get; }

    /// <summary>The text that replaces the marked range, if the hint is a replacement.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public virtual string? Replacement => _replacement;
}
