using Sketch.Colours;

namespace Sketch.Papers;

/// <summary>A scan or photograph of a paper, turned upright.</summary>
public interface IPaperPicture
{
    /// <summary>True width of what it shows, in millimetres.</summary>
    double Width { get; }

    /// <summary>True height of what it shows, in millimetres.</summary>
    double Height { get; }

    /// <summary>The mean of its colours in linear light.</summary>
    Rgb Mean { get; }

    /// <summary>A part of it as a data URL for an SVG; beyond its edges it repeats like tiles.</summary>
    /// <param name="left">Left of the part in millimetres from the picture's left.</param>
    /// <param name="top">Top of the part in millimetres from the picture's top.</param>
    /// <param name="width">Width of the part in millimetres, greater than zero.</param>
    /// <param name="height">Height of the part in millimetres, greater than zero.</param>
    /// <param name="dotsPerInch">The most pixels per inch; a coarser picture is given as it is.</param>
    string Part(double left, double top, double width, double height, double dotsPerInch);
}

/// <summary>The part of a picture that pieces are cut from, in millimetres from its top left corner: the sheet without its trim.</summary>
public sealed record PicturedSheet(IPaperPicture Picture, double Left, double Top, double Width, double Height);
