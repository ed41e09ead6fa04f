using Finwright.Numerics;

namespace Finwright.Design.DataFiles;

/// <summary>One number of a data sheet in its file: name, unit, and what can be meant at all.</summary>
/// <param name="Key">Field name with the unit.</param>
/// <param name="Factor">SI value of one unit of the file.</param>
/// <param name="Offset">Added after the factor: 273.15 for degrees.</param>
/// <param name="Least">Least number that can be meant, in the unit of the file.</param>
/// <param name="Greatest">Greatest number that can be meant, in the unit of the file.</param>
/// <param name="Optional">Whether it may be left out.</param>
public sealed record DataField(string Key, double Factor, double Offset, double Least, double Greatest, bool Optional = false)
{
    /// <summary>From the unit of the file to SI.</summary>
    public double ToSi(double number) => Factor * number + Offset;

    /// <summary>From SI to the unit of the file, without the noise of the last digits.</summary>
    public double FromSi(double value) => double.Round((value - Offset) / Factor, 9);

    /// <summary>Value and range to SI.</summary>
    public Ranged ToSi(Ranged number) => new(ToSi(number.Value), ToSi(number.Low), ToSi(number.High));

    /// <summary>Value and range to the unit of the file.</summary>
    public Ranged FromSi(Ranged value) => new(FromSi(value.Value), FromSi(value.Low), FromSi(value.High));
}

/// <summary>One number of a data sheet, in the unit of its field.</summary>
/// <param name="Range">Value and range.</param>
/// <param name="Certainty">How sure.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record DataNumber(Ranged Range, Certainty Certainty, string Source);

/// <summary>A data sheet: texts and numbers with their ranges and sources.</summary>
/// <param name="Name">Name for commands and design files.</param>
/// <param name="Title">Name for people.</param>
/// <param name="Kind">Word for its kind; null where there is one kind only.</param>
/// <param name="Remark">What to know when using it.</param>
/// <param name="Numbers">The numbers that are given, by field name.</param>
public sealed record DataSheet(string Name, string Title, string? Kind, string Remark, IReadOnlyDictionary<string, DataNumber> Numbers);

/// <summary>The fields that a kind of data sheet has.</summary>
/// <param name="Kind">Word in the field "kind"; null where there is one kind only, and then the file has no such field.</param>
/// <param name="Fields">Its numbers, in the order of the file.</param>
public sealed record DataForm(string? Kind, IReadOnlyList<DataField> Fields);

/// <summary>What a data sheet is about, and its kinds.</summary>
/// <param name="What">What it describes, in one word: material, resin.</param>
/// <param name="Forms">Its kinds.</param>
public sealed record DataSubject(string What, IReadOnlyList<DataForm> Forms);

/// <summary>What came of reading a data sheet.</summary>
/// <param name="Sheet">The sheet; null when anything was wrong.</param>
/// <param name="Findings">Everything found.</param>
public sealed record DataReading(DataSheet? Sheet, IReadOnlyList<Finding> Findings);
