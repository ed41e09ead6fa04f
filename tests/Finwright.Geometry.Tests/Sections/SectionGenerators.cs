using CsCheck;
using Finwright.Geometry.Sections;

namespace Finwright.Geometry.Tests.Sections;

/// <summary>Random sections for property tests.</summary>
internal static class SectionGenerators
{
    private static Gen<(int Camber, int Place)> Camber { get; } =
        Gen.Select(Gen.Int[0, 6], Gen.Int[2, 7], (camber, place) => (camber, camber == 0 ? 0 : place));

    /// <summary>Four-digit sections of fin thickness.</summary>
    public static Gen<Section> FourDigit { get; } =
        Gen.Select(Camber, Gen.Int[4, 24], (c, t) => (Section)new FourDigitSection(c.Camber, c.Place, t));

    /// <summary>Modified four-digit sections with a round nose.</summary>
    public static Gen<Section> Modified { get; } =
        Gen.Select(Camber, Gen.Int[4, 24], Gen.Int[1, 9], Gen.Int[2, 6], (c, t, nose, at) => (Section)new ModifiedFourDigitSection(c.Camber, c.Place, t, nose, at));

    /// <summary>16-series sections.</summary>
    public static Gen<Section> SixteenSeries { get; } =
        Gen.Select(Gen.Int[0, 6], Gen.Int[4, 24], (lift, t) => (Section)new SixteenSeriesSection(lift, t));

    /// <summary>Any section with a formula.</summary>
    public static Gen<Section> Formula { get; } = Gen.OneOf(FourDigit, Modified, SixteenSeries);

    /// <summary>Sections as fins have them: up to 16 % thick and 4 % camber, and no nose nearly sharp.</summary>
    public static Gen<Section> FinLike { get; } =
        Gen.OneOf(
            Gen.Select(Gen.Int[0, 4], Gen.Int[3, 6], Gen.Int[5, 16], (c, at, t) => (Section)new FourDigitSection(c, c == 0 ? 0 : at, t)),
            Gen.Select(Gen.Int[0, 4], Gen.Int[3, 6], Gen.Int[5, 16], Gen.Int[3, 8], Gen.Int[3, 6], (c, at, t, nose, thickest) => (Section)new ModifiedFourDigitSection(c, c == 0 ? 0 : at, t, nose, thickest)),
            Gen.Select(Gen.Int[0, 4], Gen.Int[5, 16], (lift, t) => (Section)new SixteenSeriesSection(lift, t)));
}
