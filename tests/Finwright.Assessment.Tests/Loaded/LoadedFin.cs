using Finwright.Assessment.Afloat;
using Finwright.Assessment.Loaded;
using Finwright.Assessment.Tests.Afloat;
using Finwright.Design;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Plates;
using Finwright.Water.Lifting;

namespace Finwright.Assessment.Tests.Loaded;

/// <summary>A fin that is sailed with sections in closed form and cast into a block, so that only bending is at work; stiff enough to sail, as with rods.</summary>
internal sealed class LoadedFin
{
    private const double Stiff = 4;

    /// <summary>Straight quarter chord, square to the hull.</summary>
    public static LoadedFin Upright { get; } = new(0);

    /// <summary>The same, raked far aft.</summary>
    public static LoadedFin Raked { get; } = new(40);

    private LoadedFin(double rakeDegrees)
    {
        Design = SailedFin.Design with
        {
            Shape = SailedFin.Design.Shape with { Outline = SailedFin.Design.Shape.Outline with { RakeDegrees = rakeDegrees } },
            Materials = new() { WallFactor = Stiff, CoreFactor = Stiff },
            Base = new() { RootHold = RootHold.Clamped, Fixing = Fixing.BaseOnly },
        };
        Afloat = SailedFin.Sail(Design);
        Built = FinBuilt.Of(Design, SailedFin.Blade(Design));
    }

    public FinDesign Design { get; }

    public FinAfloat Afloat { get; }

    public FinBuilt Built { get; }

    public FinStructure Structure => Built.Structure!;

    public LiftingSurface Surface => Afloat.Surface!;

    /// <summary>The blade with all of its stiffness times a factor.</summary>
    public PlateModel Times(double factor) => Structure.Plate.With(new(factor * Stiff, factor * Stiff));

    public FinLoaded Load() => LoadedWork.Of(Built, Afloat, null, TestContext.Current.CancellationToken);

    public LiftingResult At(double speed, double leewayDegrees) => Surface.Solve(Afloat.Flow(speed, leewayDegrees * Math.PI / 180));
}
