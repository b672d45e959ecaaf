using System.Globalization;

namespace Sketch.Counts;

/// <summary>One line of the log: so many cards have reached a stage, or are taken back from it.</summary>
/// <param name="At">When it was counted, in local time; the log keeps minutes.</param>
/// <param name="Stage">The stage.</param>
/// <param name="Number">How many; negative to take back, never zero.</param>
/// <param name="Card">The title of the card.</param>
public sealed record CountEntry(DateTime At, CountStage Stage, int Number, string Card)
{
    /// <summary>The largest number that one entry counts.</summary>
    public const int MostCards = 100_000;

    /// <summary>The number of characters of an <see cref="Id"/>.</summary>
    public const int IdLength = 16;

    /// <summary>How the log writes the time.</summary>
    internal const string TimeForm = "yyyy-MM-dd HH:mm";

    /// <summary>The recipient to whom the cards are given, or null.</summary>
    public string? Recipient { get; init; }

    /// <summary>The maker's note, or null.</summary>
    public string? Note { get; init; }

    /// <summary>
    /// Lower-case hexadecimal digits that no other entry has. An entry that arrives twice is counted once, and a line that does not
    /// end in them was cut off.
    /// </summary>
    public required string Id { get; init; }

    /// <summary>An id for a new entry.</summary>
    public static string NewId() => Guid.NewGuid().ToString("N")[..IdLength];

    /// <summary>Whether a text has the form of an id.</summary>
    public static bool IsId(string text) => text.Length == IdLength && text.All(char.IsAsciiHexDigitLower);

    /// <summary>The problem with words that the log would have to quote, or null.</summary>
    public static string? ProblemOf(string words) =>
        words.Any(c => c == '"' || char.IsControl(c)) ? "it contains a quotation mark or a line break."
        : words.Length > 200 ? "it is longer than 200 characters." : null;

    /// <summary>The entry as a line of the log, without its end.</summary>
    public string Line() => string.Create(CultureInfo.InvariantCulture,
        $"{At.ToString(TimeForm, CultureInfo.InvariantCulture)} {Stage.Word()} {Number} \"{Card}\"")
        + (Recipient is null ? "" : $" to \"{Recipient}\"") + (Note is null ? "" : $" note \"{Note}\"") + $" #{Id}";
}
