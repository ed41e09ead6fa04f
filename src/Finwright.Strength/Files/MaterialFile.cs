using Finwright.Design.DataFiles;
using Finwright.Numerics;
using Finwright.Strength.Materials;

namespace Finwright.Strength.Files;

/// <summary>
/// Material files, <c>*.material.json</c>: one material a file, each number with its range and source, the unit in the field's name.
/// The reader is strict, so that a mistyped field cannot silently leave the old value standing.
/// </summary>
public static class MaterialFile
{
    /// <summary>Ending of the file names.</summary>
    public const string Ending = ".material.json";

    /// <summary>The kinds of material and their numbers.</summary>
    public static DataSubject Subject => MaterialForm.Subject;

    /// <summary>Reads a material.</summary>
    /// <param name="utf8">The file's bytes.</param>
    /// <returns>The material, or everything that is wrong with the file.</returns>
    public static MaterialReading Read(ReadOnlySpan<byte> utf8)
    {
        DataReading reading = DataSheetFile.Read(utf8, MaterialForm.Subject);
        if (reading.Sheet is not DataSheet sheet)
            return new(null, reading.Findings);
        MaterialForm form = MaterialForm.All.First(f => f.Kind == sheet.Kind);
        Dictionary<string, Ranged> numbers = form.Fields.ToDictionary(f => f.Data.Key, f => f.Data.ToSi(sheet.Numbers[f.Data.Key].Range), StringComparer.Ordinal);
        Dictionary<string, MaterialSource> sources = sheet.Numbers.ToDictionary(n => n.Key, n => new MaterialSource(n.Value.Certainty, n.Value.Source), StringComparer.Ordinal);
        return new(form.Create(new(sheet.Name, sheet.Title, sheet.Remark, sources), numbers), []);
    }

    /// <summary>Writes a material, for a maker to change and read back. Same material, same bytes.</summary>
    /// <param name="stream">Receives the file.</param>
    /// <param name="material">The material.</param>
    public static void Write(Stream stream, Material material)
    {
        ArgumentNullException.ThrowIfNull(stream);
        ArgumentNullException.ThrowIfNull(material);
        MaterialForm form = MaterialForm.Of(material);
        Dictionary<string, DataNumber> numbers = form.Fields.ToDictionary(
            f => f.Data.Key,
            f => new DataNumber(f.Data.FromSi(f.Get(material)), material.Sources[f.Data.Key].Certainty, material.Sources[f.Data.Key].Text),
            StringComparer.Ordinal);
        DataSheetFile.Write(stream, new(material.Name, material.Title, form.Kind, material.Remark, numbers), form.Data);
    }
}
