using System.Globalization;

namespace Finwright.Terminal;

/// <summary>Rows of a name, a number, its unit and a remark.</summary>
/// <param name="writer">Where to.</param>
internal sealed class NumberTable(TextWriter writer)
{
    private const int NameColumns = 22;
    private const int NumberColumns = 10;

    /// <summary>Writes a row with as many digits as the format says.</summary>
    public void Row(string name, double value, string format, string unit, string remark = "") =>
        writer.WriteLine($"  {name.PadRight(NameColumns)}{value.ToString(format, CultureInfo.InvariantCulture),NumberColumns} {unit} {remark}".TrimEnd());
}
