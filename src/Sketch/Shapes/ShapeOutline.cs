using Sketch.Units;

namespace Sketch.Shapes;

/// <summary>Draws the outlines of shapes.</summary>
public static class ShapeOutline
{
    /// <summary>
    /// The outline of a shape that fills its box, in millimetres on the face that the box is on. A box without width or height gives
    /// a contour without area; negative sizes count as zero.
    /// </summary>
    public static Outline Build(Shape shape, ShapeStyle style, Rect box) =>
        EdgeCutting.Apply(Straight(shape, style, box), EdgesOf(shape, style, box.Size), box);

    /// <summary>The forms of a shape's sides, so deep that they keep clear of a pocket's notch and a tag's hole.</summary>
    private static EdgeCuts EdgesOf(Shape shape, ShapeStyle style, Size size) => shape switch
    {
        Shape.Pocket when style.ThumbNotch(size) is var notch =>
            style.Edges.AtMost(size, (size.Width / 2 - notch) * 3 / 4, (size.Height - notch) * 3 / 4),
        Shape.Tag => style.Edges.AtMost(size, size.Width / 4, size.Height / 2),
        _ => style.Edges,
    };

    /// <summary>The sides of a shape that may have a form: straight and between right angles or curves.</summary>
    public static IEnumerable<Edge> StraightSides(Shape shape, ShapeStyle style)
    {
        var side = Length.Inch(4);
        return EdgeCutting.StraightSides(Straight(shape, style with { Corner = null }, new(Length.Zero, Length.Zero, side, side)));
    }

    private static Outline Straight(Shape shape, ShapeStyle style, Rect box)
    {
        var size = new Size(Length.Max(box.Width, Length.Zero), Length.Max(box.Height, Length.Zero));
        var place = Bounds.Of(new(box.Left, box.Top, size.Width, size.Height));
        switch (shape)
        {
            case Shape.Rectangle or Shape.Square or Shape.Rounded:
                return new([Rectangle(place, style.CornerRadius(shape, size).Millimetres)]);
            case Shape.Circle or Shape.Oval:
                return new([ContourPen.Ellipse(place)]);
            case Shape.Star:
                return new([Star(StarForm.Of(style.Points), place)]);
            case Shape.Heart:
                return new([HeartForm.Draw(place)]);
            case Shape.Hexagon:
                return new([Hexagon(place)]);
            case Shape.Tile:
                return new([Tile(place)]);
            case Shape.Scallop:
                return new([size.Width == size.Height ? ScallopForm.Circle(place) : ScallopForm.Rectangle(place)]);
            case Shape.Arch:
                return new([Arch(place)]);
            case Shape.Tag:
                return TagForm.Draw(place);
            case Shape.Banner:
                var (left, right) = style.Notches(size);
                return new([Banner(place, left.Millimetres, right.Millimetres)]);
            case Shape.Ticket:
                return new([TicketForm.Draw(place, style.CornerRadius(shape, size).Millimetres)]);
            case Shape.Notched:
                return new([NotchedForm.Draw(place, style.CornerRadius(shape, size).Millimetres)]);
            case Shape.Quatrefoil:
                return new([QuatrefoilForm.Draw(place)]);
            case Shape.Pennant:
                return new([ContourPen.Polygon(
                    new(place.Left, place.Top), new(place.Right, place.Top), new(place.Centre.X, place.Bottom))]);
            case Shape.Pocket:
                return new([PocketForm.Draw(place, style.ThumbNotch(size).Millimetres)]);
            case Shape.Drop:
                return new([DropForm.Draw(place)]);
            case Shape.Bow:
                return BowForm.Silhouette(place);
            default:
                throw new ArgumentOutOfRangeException(nameof(shape));
        }
    }

    private static Contour Rectangle(Bounds box, double radius)
    {
        var (left, top, right, bottom) = box;
        return radius <= 0
            ? ContourPen.Polygon(new(left, top), new(right, top), new(right, bottom), new(left, bottom))
            : new ContourPen(new(left + radius, top))
                .Line(right - radius, top).Quarter(new(right, top), new(right, top + radius))
                .Line(right, bottom - radius).Quarter(new(right, bottom), new(right - radius, bottom))
                .Line(left + radius, bottom).Quarter(new(left, bottom), new(left, bottom - radius))
                .Line(left, top + radius).Quarter(new(left, top), new(left + radius, top))
                .Close();
    }

    private static Contour Star(StarForm form, Bounds box)
    {
        var (across, down) = (box.Width / form.Box.Width, box.Height / form.Box.Height);
        return ContourPen.Polygon([.. form.Corners.Select(c =>
            new Point(box.Left + (c.X - form.Box.Left) * across, box.Top + (c.Y - form.Box.Top) * down))]);
    }

    private static Contour Hexagon(Bounds box)
    {
        var (left, top, right, bottom) = box;
        var quarter = box.Width / 4;
        var middle = box.Centre.Y;
        return ContourPen.Polygon(
            new(left, middle), new(left + quarter, top), new(right - quarter, top),
            new(right, middle), new(right - quarter, bottom), new(left + quarter, bottom));
    }

    private static Contour Tile(Bounds box)
    {
        var (left, top, right, bottom) = box;
        var quarter = box.Height / 4;
        var middle = box.Centre.X;
        return ContourPen.Polygon(
            new(left, top + quarter), new(middle, top), new(right, top + quarter),
            new(right, bottom - quarter), new(middle, bottom), new(left, bottom - quarter));
    }

    /// <summary>The top is half a circle, or half an ellipse in a box lower than that half circle.</summary>
    private static Contour Arch(Bounds box)
    {
        var (left, top, right, bottom) = box;
        var spring = top + Math.Min(box.Width / 2, box.Height);
        return new ContourPen(new(left, spring))
            .Quarter(new(left, top), new(box.Centre.X, top))
            .Quarter(new(right, top), new(right, spring))
            .Line(right, bottom).Line(left, bottom)
            .Close();
    }

    private static Contour Banner(Bounds box, double leftNotch, double rightNotch)
    {
        var (left, top, right, bottom) = box;
        var middle = box.Centre.Y;
        List<Point> corners = [new(left, top), new(right, top)];
        if (rightNotch > 0)
        {
            corners.Add(new(right - rightNotch, middle));
        }

        corners.Add(new(right, bottom));
        corners.Add(new(left, bottom));
        if (leftNotch > 0)
        {
            corners.Add(new(left + leftNotch, middle));
        }

        return ContourPen.Polygon([.. corners]);
    }
}
