using Finwright.Design;
using Finwright.Geometry;
using Finwright.Making.Layers;
using Finwright.Making.Printing;

namespace Finwright.Assessment.Made;

/// <summary>How every part of a fin is printed.</summary>
/// <param name="Parts">Part by part, the gauge too.</param>
/// <param name="Plates">Bed by bed.</param>
public sealed record FinPrinted(IReadOnlyList<PartPrinted> Parts, IReadOnlyList<PlatePrinted> Plates);

/// <summary>How a part is printed.</summary>
public sealed record PartPrinted
{
    /// <summary>The part.</summary>
    public required PartToMake Part { get; init; }

    /// <summary>The part layer by layer.</summary>
    public required PartLayers Layers { get; init; }

    /// <summary>Time and plastic.</summary>
    public required PrintEstimate Time { get; init; }

    /// <summary>Where the print stops for something to be put in.</summary>
    public required StopPlan StopPlan { get; init; }

    /// <summary>The stops from the bed up.</summary>
    public IReadOnlyList<PrintStop> Stops => StopPlan.Stops;

    /// <summary>Ways it could lie, the best first.</summary>
    public required IReadOnlyList<RankedWay> Orientations { get; init; }

    /// <summary>Brim, discs, cooling.</summary>
    public required PrintAdvice Advice { get; init; }

    /// <summary>Overhang and footprint as it lies.</summary>
    public required RankedWay AsLaid { get; init; }

    /// <summary>Filament it takes. Not kept with the print, so that a change of prices does not print anew.</summary>
    /// <param name="prices">What filament costs.</param>
    public FilamentUse Filament(Prices prices)
    {
        ArgumentNullException.ThrowIfNull(prices);
        return FilamentUse.Of(Time.Volume, Layers.Settings.PlasticDensity, prices.SpoolKg, prices.FilamentPerKg);
    }
}

/// <summary>Parts printed together.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Parts">The parts.</param>
/// <param name="Time">Time and plastic of all of them together.</param>
/// <param name="Stops">All stops, from the bed up.</param>
/// <param name="Size">Box round all of them, metres.</param>
public sealed record PlatePrinted(int Number, IReadOnlyList<PartPrinted> Parts, PrintEstimate Time, IReadOnlyList<PrintStop> Stops, Point3 Size)
{
    /// <summary>Whether only the gauge is on it.</summary>
    public bool IsGauge => Parts.All(part => part.Part.IsGauge);
}
