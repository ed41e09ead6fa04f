using System.CommandLine;
using Finwright.Assessment.Packing;
using Finwright.Making.Cure;
using Finwright.Making.Resins;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>What may lie on the walls of a slab.</summary>
internal enum SlabCooling
{
    /// <summary>Still air.</summary>
    Air,

    /// <summary>Still water.</summary>
    Water,
}

/// <summary>Says how warm a slab of resin between printed walls grows, and how thick one may pour.</summary>
internal sealed class CureSlabCommand : ProgramCommand
{
    private const double Kelvin = 273.15;

    // A wall of a part: its height decides how freely air and water move along it.
    private const double UsualHeight = 0.2;

    private readonly Option<double?> _thickness = Inputs.Number("--thickness-mm", "mm", "Thickness of the resin between the walls, 0.2 to 200; left out: only how thick you may pour.");
    private readonly Option<double?> _wall = Inputs.Number("--wall-mm", "mm", "Thickness of each printed wall, outside the resin, 0 to 20; left out: 1.35.");
    private readonly Option<double?> _infill = Inputs.Number("--infill", "share", "Plastic inside: 15 for 15 %, or 0.15; below 1 it is taken as a share, from 1 as per cent; left out: 15 %.");
    private readonly Option<SlabCooling?> _cooling = Inputs.OneOf<SlabCooling>("--cooling", "What lies on both walls; left out: air.");
    private readonly Option<double?> _convection = Inputs.Number("--convection", "W/(m² K)", "Coefficient of the walls' outer faces, all in all, 0.1 to 10000; left out: worked out for still air (with radiation) or still water.");
    private readonly Option<double?> _ambient = Inputs.Number("--ambient-celsius", "°C", "Temperature of air or water, 0 to 60; left out: 20.");
    private readonly Option<double?> _start = Inputs.Number("--start-celsius", "°C", "Temperature of resin and walls at the pour, 0 to 60; left out: as the surroundings.");
    private readonly Option<string?> _resin = Inputs.Text("--resin", "name or file", $"A resin that Finwright knows, or a resin file; left out: {ResinInput.Usual}.");
    private readonly Option<double?> _rate = Inputs.Number("--rate-factor", "number", "Multiplies the rate of reaction, 0.01 to 100; left out: 1.");
    private readonly Option<double?> _hours = Inputs.Number("--hours", "h", "How long it is followed, 0.1 to 1000; left out: 48.");
    private readonly Option<bool> _json = Inputs.Json();

    public CureSlabCommand()
        : base(
            "cure-slab",
            "How warm does it get, and how thick may I pour? A wide slab of resin between two printed walls, in air or in water, with its range.",
            "finwright cure-slab --thickness-mm 12 --wall-mm 1.2 --infill 15 --cooling air --ambient-celsius 20 --resin laminating-slow")
    {
        foreach (Option option in (Option[])[_thickness, _wall, _infill, _cooling, _convection, _ambient, _start, _resin, _rate, _hours, _json])
            Add(option);
    }

    public override ExitCode Run(ParseResult arguments, TextStreams streams, CancellationToken cancellation)
    {
        double? thickness = Inputs.Within(arguments, _thickness, 0.2, 200);
        double ambient = (Inputs.Within(arguments, _ambient, 0, 60) ?? 20) + Kelvin, infill = arguments.GetValue(_infill) ?? 15;
        double? convection = Inputs.Within(arguments, _convection, 0.1, 10_000);
        bool isWater = arguments.GetValue(_cooling) is SlabCooling.Water;
        double share = infill < 1 ? infill : infill / 100;
        if (!(share is >= 0 and <= 0.6))
            throw new WrongInputException($"--infill {infill} is outside 0 to 60 %, for which the mixture of resin and plastic is known.", "Give a share within that range: 15 for 15 %, or 0.15.");
        ResinSystem resin = ResinInput.Find(arguments.GetValue(_resin), streams);
        PrintedPlastic plastic = MaterialLibrary.Get<PrintedPlastic>("petg-printed");
        SlabCase slab = new()
        {
            Resin = resin,
            Thickness = (thickness ?? 10) / 1e3,
            WallThickness = (Inputs.Within(arguments, _wall, 0, 20) ?? 1.35) / 1e3,
            InfillShare = share,
            StartTemperature = Inputs.Within(arguments, _start, 0, 60) is double start ? start + Kelvin : ambient,
            Surroundings = ambient,
            Cooling = convection is double given ? SurfaceCooling.Fixed(given) : isWater ? SurfaceCooling.StillWater(UsualHeight) : SurfaceCooling.StillAir(UsualHeight),
            Duration = 3600 * (Inputs.Within(arguments, _hours, 0.1, 1000) ?? 48),
            RateFactor = Inputs.Within(arguments, _rate, 0.01, 100) ?? 1,
        };
        double softening = plastic.SofteningTemperature.Value;
        SlabBand? band = thickness is null ? null : CureBand.Of(slab, cancellation);
        (ThickestPour, ThickestPour)? thickest = ambient < softening && slab.StartTemperature < softening
            ? (ThickestPour.Find(slab, softening, PourCaution.Nominal, cancellation), ThickestPour.Find(slab, softening, PourCaution.High, cancellation))
            : null;
        cancellation.ThrowIfCancellationRequested();
        CureSlabSummary summary = CureSlabSummary.Of(slab, band, thickest, softening, convection, isWater, ProgramVersion.Text);
        if (arguments.GetValue(_json))
            streams.Out.Write(AnswerJson.WriteTabular(summary));
        else
            CureSlabText.Write(streams, summary);
        if (band is null)
            return ExitCode.Good;
        return Array.TrueForAll((SlabCure[])[band.Slow, band.Nominal, band.Fast], cure => cure.Status == CureStatus.Done) && band.Nominal.WallInside.Temperature <= softening ? ExitCode.Good : ExitCode.Fails;
    }
}
