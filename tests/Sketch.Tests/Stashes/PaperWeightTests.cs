using Sketch.Stashes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Stashes;

public class PaperWeightTests
{
    // As published by paper makers, calculated with the constant 1406.5, which is 0.026 % above the exact one.
    [Theory]
    [InlineData(90, "offset", 133.2)]
    [InlineData(100, "cover", 270.42)]
    [InlineData(28, "bond", 105.3)]
    public void Pounds_convert_to_the_published_grammage(double pounds, string grade, double printed) =>
        Assert.InRange(PaperWeights.Grammage(pounds, grade)!.Value, printed * 0.9995, printed * 1.0005);

    [Fact]
    public void A_larger_number_of_pounds_in_another_grade_can_be_a_lighter_paper() =>
        Assert.True(PaperWeights.Grammage(110, "index") < PaperWeights.Grammage(80, "cover"));

    [Fact]
    public void An_unknown_grade_has_no_grammage() => Assert.Null(PaperWeights.Grammage(80, "velvet"));

    // Chart "Paper weight comparison" (info.5y1.org); a point is a thousandth of an inch.
    [Theory]
    [InlineData(65, 8)]
    [InlineData(80, 9.5)]
    [InlineData(100, 11)]
    [InlineData(120, 15)]
    public void Cover_papers_are_as_thick_as_in_the_chart(double pounds, double points) =>
        Assert.Equal(points * 0.0254, PaperWeights.EstimatedThickness(PaperWeights.Grammage(pounds, "cover")!.Value).Millimetres, 0.0006);

    [Fact]
    public void A_heavier_paper_is_never_thinner()
    {
        var thicknesses = Enumerable.Range(1, 600).Select(g => PaperWeights.EstimatedThickness(g)).ToList();

        Assert.Equal(thicknesses.Order(Comparer<Length>.Default), thicknesses);
    }
}
