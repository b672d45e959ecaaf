using Sketch.Diagnostics;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Stashes;

/// <summary>Reads the lines of a stash for what is not paper.</summary>
internal sealed class SupplyReader(SourceText source, SideReader sides, FindingBag findings)
{
    /// <summary>The supply of a line; null, which is reported, where its measure cannot be read.</summary>
    public Supply? Read(StockLine line)
    {
        var kind = SupplyKinds.Find(line.Stock)!.Value;
        if (Measured(line, new(kind, line.Name.Text, new(source, line.Span))) is not { } supply)
        {
            return null;
        }

        QuantityClause? count = null;
        LongClause? length = null;
        foreach (var clause in line.Clauses)
        {
            switch (clause)
            {
                case QuantityClause { Noun: null or "pieces" or "sheets" or "strips" or "rolls" } quantity:
                    count = quantity;
                    break;
                case LongClause longClause:
                    length = longClause;
                    break;
                case PriceClause price:
                    supply = supply with { Price = price.Amount };
                    break;
                case SideClause { IsBack: false } side when kind.Traits.HasLook:
                    supply = supply with { Face = sides.Read(side, AsPaper(supply)) };
                    break;
                default:
                    findings.Add(FindingCatalogue.IdleClause, new(source, clause.Span),
                        $"This clause has no effect on a {line.Stock}.", Takes(kind));
                    break;
            }
        }

        return Counted(line, supply, count, length);
    }

    private Supply? Measured(StockLine line, Supply supply)
    {
        var traits = supply.Kind.Traits;
        if (traits.Measure == SupplyMeasure.Envelope && line.Measure is { } envelope)
        {
            var size = StockSizes.Of(envelope, NamedSizes.FindEnvelope, "envelope", source, findings);
            return size is { } s ? supply with { Size = s.Width < s.Height ? s.Turned() : s } : null;
        }

        switch (line.Measure?.Size)
        {
            case SingleSize single when traits.Measure != SupplyMeasure.Envelope:
                return supply with { Measure = single.Value };
            case BoxSize { Width: LengthExtent width, Height: LengthExtent height } when traits.Measure == SupplyMeasure.OneOrTwo:
                return supply with { Size = new(width.Value, height.Value) };
            default:
                if (!line.IsDamaged)
                {
                    var needs = traits.Measure switch
                    {
                        SupplyMeasure.Envelope => "its size",
                        SupplyMeasure.OneOrTwo => "its width, or width x height",
                        _ => "one measure",
                    };
                    findings.Add(FindingCatalogue.BadSize, new(source, line.Span), $"This {line.Stock} needs {needs}.",
                        $"Write {StockExamples.Of(line.Stock, line.Name.Text)}.");
                }

                return null;
        }
    }

    /// <summary>With what is on hand: pieces, one length, or a number of strips or rolls of one length.</summary>
    private Supply Counted(StockLine line, Supply supply, QuantityClause? count, LongClause? length)
    {
        var isInStrips = count is { Noun: "strips" or "rolls" };
        if (supply.Kind.Traits.Count == SupplyCount.Tool)
        {
            return supply with { Pieces = count?.Count ?? 1 };
        }

        if (isInStrips && length is null && !line.IsDamaged)
        {
            findings.Add(FindingCatalogue.Expected, new(source, count!.Span),
                $"The length of each {count.Noun![..^1]} of {supply.Name} is missing.",
                $"Write {count.Count} {count.Noun}, 12 in long.");
        }
        else if (isInStrips && length is { } each)
        {
            return supply with
            {
                Strips = count!.Count,
                StripLength = each.Amount,
                Long = each.Amount * count.Count,
                IsOnRolls = count.Noun == "rolls",
            };
        }

        if (count is null && length is null && !line.IsDamaged)
        {
            findings.Add(FindingCatalogue.Expected, new(source, line.Span),
                $"The {(supply.Kind.Traits.Count == SupplyCount.Length ? "length" : "number")} of {supply.Name} is missing.",
                supply.Kind.Traits.Count == SupplyCount.Length ? "Add 40 ft long." : "Add 60 pieces.");
        }

        return supply with { Pieces = isInStrips ? null : count?.Count, Long = length?.Amount };
    }

    /// <summary>A scan of a supply shows the thing itself; of what is cut to length it shows the width of a sheet.</summary>
    private static StockPaper AsPaper(Supply supply)
    {
        var size = supply.Size ?? new(supply.Measure ?? Length.Inch(1), supply.Measure ?? Length.Inch(1));
        var plain = SideReader.Named(supply.Name);
        return new(supply.Name, StockKind.Patterned, size, plain, plain, supply.Location);
    }

    private static string Takes(SupplyKind kind) => (kind.Traits.Count switch
    {
        SupplyCount.Tool => "It takes a price",
        _ => "It takes a count (60 pieces), a length (40 ft long), strips of a length (12 strips, 9 in long), a price",
    }) + (kind.Traits.HasLook ? " and front with a pattern or colour." : ".");
}
