using System.Text;
using Finwright.Design;
using Finwright.Making.Files;
using Finwright.Making.Resins;
using Finwright.Strength.Files;
using Finwright.Strength.Materials;

namespace Finwright.Workshop.Library;

/// <summary>What a thing of the library is, apart from where it is kept.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Note">Where it comes from, what to know of it.</param>
public abstract record LibraryContent(LibraryKind Kind, string Name, string Note)
{
    /// <summary>Its file as text; <see cref="LibraryFile"/> reads as the same thing.</summary>
    public abstract string Write();

    /// <summary>Puts it into a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="isKnown">Whether it came with the program, so that its name says everything.</param>
    /// <returns>The design as it reads then, with what is to be said against it.</returns>
    public abstract DesignReading Into(FinDesign design, bool isKnown);
}

/// <summary>A part of the design file that is kept by itself: a box, a printer, hardware, a board, a sail, a rider, a spot.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Note">Where it comes from, what to know of it.</param>
/// <param name="Carrier">A design of which only the fields of the kind mean anything.</param>
public sealed record DesignPart(LibraryKind Kind, string Name, string Note, FinDesign Carrier) : LibraryContent(Kind, Name, Note)
{
    /// <summary>The part of a design.</summary>
    /// <param name="kind">Which part.</param>
    /// <param name="name">What it is to be called.</param>
    /// <param name="note">Where it comes from.</param>
    /// <param name="design">The design.</param>
    public static DesignPart Of(LibraryKind kind, string name, string note, FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return new(kind, name, note, PartFields.Put(design, PartFields.Blank(), kind).Design ?? throw new ArgumentException("The part of the design cannot be read by itself.", nameof(design)));
    }

    /// <summary>The part with every field at its default.</summary>
    public static DesignPart Usual(LibraryKind kind, string name, string note) => new(kind, name, note, PartFields.Blank());

    /// <inheritdoc/>
    public override string Write() => LibraryFile.Write(this);

    /// <inheritdoc/>
    public override DesignReading Into(FinDesign design, bool isKnown)
    {
        DesignReading reading = PartFields.Put(Carrier, design, Kind);
        // A box without bolts leaves nothing to run through the base: what still holds then comes with it.
        return Kind is LibraryKind.Box && reading.Design is { Base.Fixing: Fixing.ThroughBolts } taken && reading.Findings.Any(finding => finding.Code == "bolts-missing")
            ? DesignReader.Read(DesignWriter.Write(taken with { Base = taken.Base with { Fixing = taken.Hardware.ClampRods.Count > 0 ? Fixing.ClampRods : Fixing.BaseOnly } }))
            : reading;
    }
}

/// <summary>A material.</summary>
/// <param name="Material">The material.</param>
public sealed record KeptMaterial(Material Material) : LibraryContent(LibraryKind.Material, Material.Title, Material.Remark)
{
    /// <summary>The word for its kind in files: printed-plastic, cast-resin, rod, metal, sheet.</summary>
    public string Form => MaterialNumber.KindOf(Material);

    /// <inheritdoc/>
    public override string Write()
    {
        using MemoryStream stream = new();
        MaterialFile.Write(stream, Material);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <inheritdoc/>
    public override DesignReading Into(FinDesign design, bool isKnown)
    {
        ArgumentNullException.ThrowIfNull(design);
        MaterialChoice choice = isKnown ? new() { Material = Material.Name } : new() { Content = Write() };
        Materials given = design.Materials;
        FinDesign changed = Material switch
        {
            PrintedPlastic plastic => design with
            {
                Materials = given with { Printed = choice },
                // The print's own page speaks of the filament by name and mass.
                Print = design.Print with { Filament = Shortened(Material.Title), FilamentDensityGPerCm3 = Math.Round(plastic.Density.Value / 1000, 4) },
            },
            CastResin => design with { Materials = given with { Resin = choice } },
            Rod => design with { Materials = given with { Rod = choice } },
            Metal => design with { Materials = given with { Bolt = choice } },
            _ => design with { Materials = given with { Sheet = choice } },
        };
        return DesignReader.Read(DesignWriter.Write(changed));
    }

    private static string Shortened(string text) => text.Length > DesignLimits.TextLength ? text[..DesignLimits.TextLength] : text;
}

/// <summary>A resin.</summary>
/// <param name="Resin">The resin.</param>
public sealed record KeptResin(ResinSystem Resin) : LibraryContent(LibraryKind.Resin, Resin.Title, Resin.Remark)
{
    /// <inheritdoc/>
    public override string Write()
    {
        using MemoryStream stream = new();
        ResinFile.Write(stream, Resin);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <inheritdoc/>
    public override DesignReading Into(FinDesign design, bool isKnown)
    {
        ArgumentNullException.ThrowIfNull(design);
        string label = Resin.Title.Length > DesignLimits.TextLength ? Resin.Title[..DesignLimits.TextLength] : Resin.Title;
        FinDesign changed = design with { Pour = design.Pour with { Resin = label, System = isKnown ? new() { Name = Resin.Name } : new() { Content = Write() } } };
        return DesignReader.Read(DesignWriter.Write(changed));
    }
}
