using Finwright.Geometry;
using Finwright.Page.Words;
using Finwright.Papers.Words;

namespace Finwright.Page.Scene;

/// <summary>A scale and the words that go with a place, as the browser's module takes them.</summary>
internal static class SceneScale
{
    /// <summary>The scale for the header of a scene file.</summary>
    /// <param name="scale">The colours.</param>
    /// <param name="unit">Unit of the values.</param>
    /// <param name="reader">The reader.</param>
    /// <param name="limit">A limit that is drawn as a line; null for none.</param>
    /// <param name="isPlaced">Whether places of the scene are places of the fin, so that depth and place along the chord mean something.</param>
    public static object Of(ColourScale scale, string unit, Reader reader, double? limit = null, bool isPlaced = true) => new
    {
        first = scale.First,
        step = scale.Step,
        colours = scale.Colours,
        limit,
        unit,
        decimals = scale.Step >= 10 ? 0 : scale.Decimals + 1,
        comma = reader.Tongue.Number(0.5, 1).Contains(','),
        length = reader.Tongue.LengthUnit,
        perMetre = reader.Tongue.LengthUnit == "in" ? 1 / UnitScale.Inch : 1e3,
        words = isPlaced ? reader["{0}, {1} below the hull, {2} aft of the root's quarter chord"] : "{0}",
        notKnown = reader["not known here"],
    };

    /// <summary>A place on the fin in words.</summary>
    public static string Place(Point3 place, Reader reader) => reader["{0} below the hull, {1} aft", reader.Tongue.Length(place.Y, 0), reader.Tongue.Length(place.X, 0)];
}
