using Finwright.Strength.Joints;
using Finwright.Strength.Margins;

namespace Finwright.Assessment.Packing;

/// <summary>The most strained place of one part.</summary>
public sealed record StressSummary
{
    /// <summary>What may give.</summary>
    public required StressedPart Part { get; init; }

    /// <summary>In words.</summary>
    public required string Name { get; init; }

    /// <summary>Where, aft of the root quarter chord.</summary>
    public required double AftMm { get; init; }

    /// <summary>At what depth.</summary>
    public required double DepthMm { get; init; }

    /// <summary>Equivalent stress.</summary>
    public required double StressMpa { get; init; }

    /// <summary>What the part bears.</summary>
    public required double StrengthMpa { get; init; }

    /// <summary>Lower end of what it bears.</summary>
    public required double StrengthLowMpa { get; init; }

    /// <summary>By how much the load may grow; null without stress.</summary>
    public required double? Reserve { get; init; }

    internal static StressSummary Of(StressPeak peak) => new()
    {
        Part = peak.Part,
        Name = peak.Name,
        AftMm = Rounded.Mm(peak.X),
        DepthMm = Rounded.Mm(peak.Y),
        StressMpa = Rounded.Digits(1e-6 * peak.Stress),
        StrengthMpa = Rounded.Digits(1e-6 * peak.Strength.Value),
        StrengthLowMpa = Rounded.Digits(1e-6 * peak.Strength.Low),
        Reserve = peak.Stress > 0 ? Rounded.Digits(peak.Reserve) : null,
    };

    /// <summary>The place in words.</summary>
    internal static string Words(StressPeak peak) => $"{peak.Name}, {1e3 * peak.Y:0} mm below the hull";
}

/// <summary>A joint under load.</summary>
public sealed record JointSummary
{
    /// <summary>How it came out.</summary>
    public required JointStatus Status { get; init; }

    /// <summary>Share of the face that is in contact.</summary>
    public required double ContactShare { get; init; }

    /// <summary>Extent of the contact along the chord.</summary>
    public required double ContactLengthMm { get; init; }

    /// <summary>Extent of the contact across the fin.</summary>
    public required double ContactDepthMm { get; init; }

    /// <summary>Greatest gap.</summary>
    public required double GapMm { get; init; }

    /// <summary>Greatest pressure between the parts.</summary>
    public required double GreatestPressureMpa { get; init; }

    /// <summary>Pull of each bolt or rod.</summary>
    public required IReadOnlyList<double> TensionsN { get; init; }

    /// <summary>Turn of the blade that the load adds.</summary>
    public required double TurnDegrees { get; init; }

    internal static JointSummary? Of(JointState? state) => state is null ? null : new()
    {
        Status = state.Status,
        ContactShare = Rounded.Digits(state.ContactShare),
        ContactLengthMm = Rounded.Mm(state.ContactLength),
        ContactDepthMm = Rounded.Mm(state.ContactDepth),
        GapMm = Rounded.Mm(state.Gap),
        GreatestPressureMpa = Rounded.Digits(1e-6 * state.GreatestPressure),
        TensionsN = [.. state.Tensions.Select(Rounded.Digits)],
        TurnDegrees = Rounded.Degrees(state.RotationX),
    };
}
