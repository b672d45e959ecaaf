using System.Collections.Immutable;
using System.Threading.Channels;
using Sketch.Diagnostics;
using Sketch.Editors.Answers;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;

namespace Sketch.Editors.Server;

/// <summary>
/// Publishes the findings of texts after each change. One text is checked at a time, each in its latest state, so keys that are pressed
/// during a check cost one more check and not one each.
/// </summary>
/// <param name="documents">The open texts.</param>
/// <param name="findings">Marks them.</param>
/// <param name="publish">Publishes them.</param>
internal sealed class FindingFeed(OpenDocuments documents, Findings findings, Func<FileFindings, Task> publish)
{
    private readonly Channel<string> _changed = Channel.CreateUnbounded<string>(new() { SingleReader = true });
    private readonly Dictionary<string, ImmutableArray<Finding>> _published = [];

    /// <summary>A text is opened, changed or closed.</summary>
    public void Changed(string uri) => _changed.Writer.TryWrite(uri);

    /// <summary>Publishes findings until it is cancelled.</summary>
    public async Task Run(CancellationToken cancellation)
    {
        while (await _changed.Reader.WaitToReadAsync(cancellation).ConfigureAwait(false))
        {
            var changed = new HashSet<string>(StringComparer.Ordinal);
            while (_changed.Reader.TryRead(out var uri))
            {
                changed.Add(uri);
            }

            foreach (var uri in changed)
            {
                await (documents.Find(uri) is { } document ? Publish(document, Check(document)) : Clear(uri)).ConfigureAwait(false);
            }

            // Others may name what has changed. A key that is pressed now is more urgent.
            foreach (var other in documents.All.Where(d => !changed.Contains(d.Uri)).TakeWhile(_ => !_changed.Reader.TryPeek(out var _)))
            {
                var found = Check(other);
                if (!_published.TryGetValue(other.Uri, out var published) || !published.SequenceEqual(found))
                {
                    await Publish(other, found).ConfigureAwait(false);
                }
            }
        }
    }

    private ImmutableArray<Finding> Check(OpenDocument document) => documents.Check(document).Findings;

    private Task Publish(OpenDocument document, ImmutableArray<Finding> found)
    {
        _published[document.Uri] = found;
        return publish(findings.Of(document, found));
    }

    private Task Clear(string uri)
    {
        _published.Remove(uri);
        return publish(new(uri, null, []));
    }
}
