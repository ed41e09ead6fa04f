using Finwright.Assessment.Afloat;
using Finwright.Strength.FromDesign;
using Finwright.Strength.Hydroelastic;
using Finwright.Strength.Margins;
using Finwright.Strength.Plates;
using Finwright.Water.Lifting;
using Finwright.Water.Sailing;

namespace Finwright.Assessment.Loaded;

/// <summary>Brings load, shape, stress and joint together, load case by load case.</summary>
internal static class LoadedWork
{
    private const int Stations = 21;

    /// <summary>Loads a fin.</summary>
    /// <param name="built">The fin's structure.</param>
    /// <param name="afloat">What it does when it sails.</param>
    /// <param name="progress">Takes the share that is done.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static FinLoaded Of(FinBuilt built, FinAfloat afloat, IProgress<double>? progress, CancellationToken cancellation)
    {
        FinLoaded answer = new() { Structure = built.Structure, Problem = built.Problem ?? afloat.Problem };
        if (built.Structure is not { } structure || afloat.Surface is not { } surface)
            return answer;
        CaseLoaded[] cases = new CaseLoaded[afloat.Cases.Count];
        Parallel.For(0, cases.Length, new() { CancellationToken = cancellation }, i => cases[i] = Case(structure, surface, afloat.Cases[i]));
        progress?.Report(0.8);
        double? pressure = DivergencePressure(structure.Plate, surface);
        return answer with
        {
            Cases = cases,
            DivergencePressure = pressure,
            DivergenceSpeed = pressure is double q ? Math.Sqrt(2 * q / afloat.Water.Density) : null,
            Torques = NutTorque.Of(structure, Array.Find(cases, own => own.Load.Kind == LoadCaseKind.Overload)),
            Grounding = GroundingWork.Of(structure, afloat.Balance[LoadCaseKind.Grounding]),
        };
    }

    private static CaseLoaded Case(FinStructure structure, LiftingSurface surface, CaseAfloat sailed)
    {
        // How far the joint opens follows from the load alone: the root of a cantilever bears the same moment however it bends.
        double moment = StripPressure.Of(sailed.UnderHull.Result, surface).Sum(load => load.Force * load.Y);
        if (!sailed.IsCarried && sailed.UnderHull.Result.SideForce != 0)
            moment *= sailed.UnderHull.Asked / sailed.UnderHull.Result.SideForce;
        PlateModel plate = structure.PlateUnder(moment);
        BentFin bent = ShapeUnderLoad.Carrying(surface, plate, sailed.UnderHull);
        bool tooFar = (bent.Status is LoadedStatus.Settled or LoadedStatus.NotCarried) && bent.Plate.DeflectionShare > CaseLoaded.FarthestShare;
        bool settled = bent.Status is LoadedStatus.Settled && !tooFar;
        BentFin? steady = settled ? ShapeUnderLoad.At(surface, plate, sailed.UnderHull.Result) : null;
        PlateFin fin = plate.Fin;
        return new()
        {
            Load = sailed.Load,
            Status = tooFar ? LoadedStatus.BeyondRange : bent.Status,
            Passes = bent.Passes,
            Forces = bent.Loads,
            Plate = bent.Plate,
            Along = [.. Enumerable.Range(0, Stations).Select(i => SectionBend.At(bent.Plate, fin, fin.Span * i / (Stations - 1)))],
            RootMoment = bent.Plate.LoadMomentX,
            Peaks = StructureMargins.Of(structure, bent.Plate),
            Joint = structure.Root.Under(bent.Plate.LoadMomentX),
            Base = structure.Root.InBox(Math.Abs(bent.Plate.Load), Math.Abs(bent.Plate.LoadMomentX)),
            StiffLeeway = sailed.IsCarried ? sailed.UnderHull.Result.Flow.Leeway : null,
            BentLeeway = settled ? bent.Flow.Flow.Leeway : null,
            SideForceShare = steady is { Status: LoadedStatus.Settled } ? steady.Flow.SideForce / sailed.UnderHull.Result.SideForce : null,
            EffortShift = settled && bent.Flow.CentreOfEffort is { } now && sailed.UnderHull.Result.CentreOfEffort is { } before ? now.Y - before.Y : null,
        };
    }

    /// <summary>Dynamic pressure of static divergence; null when the fin never twists without end.</summary>
    private static double? DivergencePressure(PlateModel plate, LiftingSurface surface)
    {
        TwistResponse water = surface.ResponseToTwist();
        int strips = water.Depths.Count;
        PlateFin fin = plate.Fin;
        List<IReadOnlyList<PlateLoad>> sets = [];
        List<(double X, double Y)> places = [];
        for (int j = 0; j < strips; j++)
        {
            double y = Math.Min(water.Depths[j], plate.MeshEnd), leading = fin.LeadingEdge(y), chord = fin.TrailingEdge(y) - leading;
            sets.Add([new(water.QuarterChords[j], y, 1)]);
            // A moment as a couple well inside the blade, where it does not bend the edges.
            sets.Add([new(leading + 0.1 * chord, y, 1 / (0.5 * chord)), new(leading + 0.6 * chord, y, -1 / (0.5 * chord))]);
            places.Add((leading + 0.1 * chord, y));
            places.Add((leading + 0.9 * chord, y));
        }

        PlateFlexibility answer = plate.Flexibility(sets, places);
        if (answer.Status is not PlateStatus.Solved)
            return null;
        // Twist nose to starboard of strip i for load set k; sets alternate between force and moment.
        double[] flexibility = new double[strips * 2 * strips], response = new double[2 * strips * strips];
        for (int i = 0; i < strips; i++)
        {
            double apart = places[2 * i + 1].X - places[2 * i].X;
            for (int k = 0; k < 2 * strips; k++)
                flexibility[i * 2 * strips + k] = (answer.Deflections[k * answer.Places + 2 * i] - answer.Deflections[k * answer.Places + 2 * i + 1]) / apart;
            for (int j = 0; j < strips; j++)
            {
                response[2 * i * strips + j] = water.Load[i * strips + j] * water.Widths[i];
                response[(2 * i + 1) * strips + j] = water.Moment[i * strips + j] * water.Widths[i];
            }
        }

        return Divergence.Pressure(flexibility, response, strips);
    }
}
