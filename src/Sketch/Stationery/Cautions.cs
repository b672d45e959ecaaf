namespace Sketch.Stationery;

/// <summary>
/// The usual cautions where work with paper can hurt someone. Knives: art teachers' guidance on cutting tools; guillotines and adhesives:
/// common practice, no source; small parts: whatever fits wholly into the small-parts cylinder of 16 CFR 1501.4 can be swallowed;
/// a gem always fits.
/// </summary>
public static class Cautions
{
    /// <summary>Craft knives.</summary>
    public const string Knives =
        "Knives: use a fresh blade, a cutting mat larger than the work and a metal ruler; fingers clear and the holding hand behind "
            + "the blade, and cap the knife when you put it down.";

    /// <summary>Guillotines and trimmers.</summary>
    public const string Guillotines =
        "Guillotines and trimmers: guard on, fingers well away from the cutting line, never reach under the blade; close and lock the "
            + "arm after every use, out of children's reach.";

    /// <summary>Gems and dots.</summary>
    public const string SmallParts =
        "Gems and other small parts can be swallowed: fix them firmly, and leave them off cards for young children and for people who "
            + "may put things into their mouths, unless the home says otherwise.";

    /// <summary>Adhesives.</summary>
    public const string Adhesives = "Adhesives: follow the maker's label, and air the room where one smells.";
}
