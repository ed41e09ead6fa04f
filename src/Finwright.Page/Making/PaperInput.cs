using System.Globalization;
using Finwright.Page.Words;
using Finwright.Papers;

namespace Finwright.Page.Making;

/// <summary>Paper and rulers as they were typed.</summary>
/// <param name="Paper">The paper; null when it is none that papers fit on.</param>
/// <param name="Rulers">What the rulers measured; null when it cannot be.</param>
/// <param name="Problem">What is wrong, and what to do; empty when nothing is.</param>
internal sealed record PaperInput(PaperSize? Paper, RulerReading? Rulers, string Problem)
{
    /// <summary>Reads them.</summary>
    /// <param name="paper">A name, or two sides in millimetres.</param>
    /// <param name="across">The ruler across, mm.</param>
    /// <param name="down">The ruler down, mm.</param>
    /// <param name="reader">In whose words.</param>
    public static PaperInput Of(string paper, string across, string down, Reader reader)
    {
        PaperSize? size = PaperSize.Find(paper);
        if (size is null)
            return new(null, null, reader["\"{0}\" is no paper known here. Type A4, Letter, A3, or two sides in millimetres such as 210x297.", paper]);
        if (!size.IsUsable)
            return new(null, null, reader["Paper of {0} cannot hold the papers. Type paper from 148 x 210 mm (A5) to 1200 mm long.", size.Name]);
        return Ruler(across) is double right && Ruler(down) is double low
            ? new(size, new(right, low), "")
            : new(size, null, reader["A ruler of 100 mm measures {0} to {1} mm on paper; farther off, the page was fitted to the paper. Print at 100 %, measure again and type millimetres.", 1e3 * RulerReading.Least, 1e3 * RulerReading.Greatest]);
    }

    private static double? Ruler(string text) =>
        double.TryParse(text.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double millimetres)
            && millimetres / 1e3 is >= RulerReading.Least and <= RulerReading.Greatest ? millimetres / 1e3 : null;
}
