using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Stashes;

namespace Sketch.Preview.Server;

/// <summary>A text of a window, with what the page wants to see of it.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Window">The window.</param>
/// <param name="Text">The text.</param>
/// <param name="Stamp">The stamp of the content of the file when the edits began.</param>
/// <param name="Saved">Whether the file holds that text.</param>
/// <param name="Stash">The stash whose papers are used; empty for none.</param>
/// <param name="Choices">The papers chosen for roles, as on the command line.</param>
/// <param name="Unfolded">Whether the base is shown unfolded.</param>
/// <param name="Known">Stamps of the pictures that the page has.</param>
internal sealed record SeeRequest(
    string File = "",
    string Window = "",
    string Text = "",
    string Stamp = "",
    bool Saved = false,
    string Stash = "",
    IReadOnlyList<string>? Choices = null,
    bool Unfolded = false,
    IReadOnlyList<string>? Known = null)
{
    /// <summary>The text with its papers; choices that cannot be read are left out.</summary>
    public OpenText ToText() => new(File, TextForm.Plain(Text), Stamp, Stash.Length > 0 ? Stash : null,
        [.. (Choices ?? []).Select(t => PaperChoice.TryParse(t, out var choice) ? choice : null).OfType<PaperChoice>()]);
}

/// <summary>A text to save.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Window">The window.</param>
/// <param name="Text">The text.</param>
/// <param name="Stamp">The stamp of the content that the page knows; empty for a new file.</param>
internal sealed record SaveRequest(string File = "", string Window = "", string Text = "", string Stamp = "");

/// <summary>A file to begin.</summary>
/// <param name="File">Its name.</param>
/// <param name="From">What a stash begins with: <c>usual</c>, <c>samples</c> or <c>empty</c>.</param>
/// <param name="IsMetric">Whether it is in millimetres.</param>
/// <param name="Stash">The stash of a batch; empty for none.</param>
/// <param name="Makes">The cards that a batch makes; null for one in its folder, if there is one.</param>
internal sealed record BeginRequest(
    string File = "", string From = "", bool IsMetric = false, string Stash = "", IReadOnlyList<FirstMake>? Makes = null);

/// <summary>Unsaved edits to discard.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Window">The window in which they were typed.</param>
/// <param name="Keep">Whether they are kept among the earlier texts.</param>
internal sealed record ForgetRequest(string File = "", string Window = "", bool Keep = false);

/// <summary>A text to format.</summary>
internal sealed record TidyRequest(string File = "", string Text = "");

/// <summary>The batch that a window shows.</summary>
/// <param name="File">The batch.</param>
/// <param name="Window">The window.</param>
/// <param name="Left">Whether to plan only what is left according to its count.</param>
/// <param name="Easy">Whether a paper may take a sheet more where that saves much work.</param>
internal sealed record PlanRequest(string File = "", string Window = "", bool Left = false, bool Easy = false);

/// <summary>Papers to write into a card, or for the cards of a line of a batch.</summary>
/// <param name="File">The card.</param>
/// <param name="Window">The window that shows it.</param>
/// <param name="Batch">The batch; empty for the card itself.</param>
/// <param name="Line">The line of the batch.</param>
internal sealed record KeepRequest(string File = "", string Window = "", string Batch = "", int Line = 0);
