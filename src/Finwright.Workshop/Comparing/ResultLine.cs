using System.Globalization;

namespace Finwright.Workshop.Comparing;

/// <summary>What a result is about, in the order of the job.</summary>
public enum ResultGroup
{
    /// <summary>Outline and sections.</summary>
    Shape,

    /// <summary>The fin when it sails.</summary>
    Water,

    /// <summary>Whether it bends, opens or breaks.</summary>
    Strength,

    /// <summary>Time and plastic.</summary>
    Print,

    /// <summary>Resin and air.</summary>
    Pour,

    /// <summary>Temperatures and times of the cure.</summary>
    Cure,

    /// <summary>Mass, cost and time of the whole job.</summary>
    Plan,

    /// <summary>Under a hung weight.</summary>
    Bench,

    /// <summary>How the fin stands to what is asked of it.</summary>
    Verdicts,
}

/// <summary>One result of a design.</summary>
/// <param name="Key">Stable name, for example <c>water.cruise.leeway</c>: lines of two designs belong together by it.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Name">Name in plain words.</param>
/// <param name="Value">The number, in the unit; null when it is not known or there is none.</param>
/// <param name="Word">The answer as a word, or the state of a verdict; null for a bare number.</param>
/// <param name="Unit">Unit as a person reads it; empty for none.</param>
/// <param name="Low">Lower end of the range; null when none is known.</param>
/// <param name="High">Upper end.</param>
/// <param name="Decimals">Decimals that the number deserves.</param>
public sealed record ResultLine(string Key, ResultGroup Group, string Name, double? Value, string? Word, string Unit, double? Low, double? High, int Decimals)
{
    /// <summary>The answer as a person reads it: word, number, or both.</summary>
    public string Shown => Value is not double value ? Word ?? "-" : Word is null ? Number(value) : $"{Word}, {Number(value)}";

    /// <summary>The range as a person reads it; empty when none is known.</summary>
    public string Range => Low is double low && High is double high ? $"{Bare(low)} to {Bare(high)}" : "";

    /// <summary>A number as this line shows it, with the unit.</summary>
    public string Number(double value) => Unit.Length == 0 ? Bare(value) : Unit == "°" ? Bare(value) + Unit : $"{Bare(value)} {Unit}";

    /// <summary>A number as this line shows it, without the unit; a rounded zero has no sign.</summary>
    public string Bare(double value) => Rounded(value).ToString("F" + Decimals, CultureInfo.InvariantCulture);

    /// <summary>A number to the decimals of this line.</summary>
    internal double Rounded(double value) => Math.Round(value, Decimals) + 0.0;
}
