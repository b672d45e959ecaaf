using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.SpecialGraphicsState;
using UglyToad.PdfPig.Graphics.Operations.TextObjects;
using UglyToad.PdfPig.Tokens;

namespace Sketch.Tests.Output.Rendering;

/// <summary>The structure of a PDF as its objects give it, for comparison with the marks on its pages.</summary>
internal sealed class PdfStructure(PdfDocument pdf)
{
    private readonly DictionaryToken _catalogue = pdf.Structure.Catalog.CatalogDictionary;

    /// <summary>An entry of the catalogue; null if it is not there.</summary>
    public IToken? Catalogue(params string[] path) => Entry(_catalogue, path);

    /// <summary>An element: its number, what it is, its alternative text, the number of its page and its marks there.</summary>
    public sealed record Element(long Number, string Role, string? Alternative, long? Page, IReadOnlyList<int> Marks);

    /// <summary>The elements in reading order, each before those in it.</summary>
    public IEnumerable<Element> Elements() => From(Reference(Entry(_catalogue, "StructTreeRoot"), "K"));

    /// <summary>For each mark of a page the number of the element that the table of parents gives.</summary>
    public IReadOnlyList<long> Parents(Page page)
    {
        var key = ((NumericToken)page.Dictionary.Data["StructParents"]).Int;
        var table = (ArrayToken)Entry(_catalogue, "StructTreeRoot", "ParentTree", "Nums")!;
        var at = Enumerable.Range(0, table.Length / 2).Single(i => ((NumericToken)table[i * 2]).Int == key);
        return [.. ((ArrayToken)Resolve(table[at * 2 + 1])).Data.Select(p => ((IndirectReferenceToken)p).Data.ObjectNumber)];
    }

    /// <summary>The number of a page's object.</summary>
    public IReadOnlyList<long> PageNumbers() => [.. Kids(Entry(_catalogue, "Pages")!)];

    /// <summary>The marks of a page with numbers, in the order of its content.</summary>
    public static IEnumerable<int> Marks(Page page) => page.Operations.OfType<BeginMarkedContentWithProperties>()
        .Select(o => o.Properties?.Data.GetValueOrDefault("MCID")).OfType<NumericToken>().Select(n => n.Int);

    /// <summary>Operators of a page that end what was not begun last, or draw outside every mark.</summary>
    public static IEnumerable<string> Misplaced(Page page)
    {
        var open = new Stack<char>();
        foreach (var operation in page.Operations)
        {
            if (Begins(operation) is { } begun)
            {
                open.Push(begun);
            }
            else if (Ends(operation) is { } ended && (!open.TryPop(out var last) || last != ended))
            {
                yield return $"{operation.Operator} ends {ended}";
            }
            else if (operation.Operator is "S" or "f" or "f*" or "B" or "B*" or "Do" or "sh" or "Tj" && !open.Contains('m'))
            {
                yield return $"{operation.Operator} outside every mark";
            }
        }

        if (open.Count > 0)
        {
            yield return $"{string.Join(", ", open)} left open";
        }
    }

    private static char? Begins(IGraphicsStateOperation operation) => operation switch
    {
        Push => 'q',
        BeginText => 't',
        BeginMarkedContent or BeginMarkedContentWithProperties => 'm',
        _ => null,
    };

    private static char? Ends(IGraphicsStateOperation operation) => operation switch
    {
        Pop => 'q',
        EndText => 't',
        EndMarkedContent => 'm',
        _ => null,
    };

    private IEnumerable<long> Kids(IToken node) =>
        ((ArrayToken)Entry(node, "Kids")!).Data.Cast<IndirectReferenceToken>().SelectMany(k =>
            Entry(k, "Type") is NameToken { Data: "Page" } ? [k.Data.ObjectNumber] : Kids(k));

    private IEnumerable<Element> From(IndirectReferenceToken reference)
    {
        var kids = Resolve(Entry(reference, "K")!) is ArrayToken several ? several.Data : [Entry(reference, "K")!];
        yield return new(
            reference.Data.ObjectNumber,
            ((NameToken)Entry(reference, "S")!).Data,
            Entry(reference, "Alt") switch { StringToken text => text.Data, HexToken text => text.Data, _ => null },
            Raw(reference, "Pg") is IndirectReferenceToken page ? page.Data.ObjectNumber : null,
            [.. kids.OfType<NumericToken>().Select(k => k.Int)]);
        foreach (var element in kids.OfType<IndirectReferenceToken>().SelectMany(From))
        {
            yield return element;
        }
    }

    private IndirectReferenceToken Reference(IToken? parent, string name) => (IndirectReferenceToken)Raw(parent!, name)!;

    private IToken? Raw(IToken parent, string name) =>
        Resolve(parent) is DictionaryToken dictionary && dictionary.Data.TryGetValue(name, out var value) ? value : null;

    private IToken? Entry(IToken? parent, params string[] path) =>
        path.Aggregate(parent, (token, name) => token is null ? null : Raw(token, name) is { } value ? Resolve(value) : null);

    private IToken Resolve(IToken token) =>
        token is IndirectReferenceToken reference ? pdf.Structure.GetObject(reference.Data).Data : token;
}
