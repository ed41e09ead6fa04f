using Finwright.Page.Words;
using Finwright.Papers;
using Finwright.Papers.Words;

namespace Finwright.Page.Plots;

/// <summary>Axes in the units that the reader wants, and the factors that lead to them from SI.</summary>
/// <param name="reader">The reader.</param>
internal sealed class PlotUnits(Reader reader)
{
    private bool IsInch => reader.Choice.Units is PaperUnits.Inch;

    /// <summary>Metres to what lengths are shown in.</summary>
    public double Length => IsInch ? 1 / UnitScale.Inch : 1e3;

    /// <summary>Newtons to what forces are shown in.</summary>
    public double Force => IsInch ? 1 / UnitScale.PoundForce : 1;

    /// <summary>Newtons per metre to what a load along the span is shown in.</summary>
    public double LineLoad => IsInch ? UnitScale.Inch / UnitScale.PoundForce : 1e-2;

    /// <summary>An axis of lengths.</summary>
    /// <param name="title">Quantity in English.</param>
    /// <param name="decimals">Decimals of a millimetre.</param>
    public PlotAxis LengthAxis(string title, int decimals = 0) => new(reader[title], reader.Tongue.LengthUnit, IsInch ? decimals + 2 : decimals);

    /// <summary>An axis of forces.</summary>
    public PlotAxis ForceAxis(string title) => new(reader[title], IsInch ? "lbf" : "N", 0);

    /// <summary>An axis of loads along the span.</summary>
    public PlotAxis LineLoadAxis(string title) => new(reader[title], IsInch ? "lbf/in" : "N/cm", 1);

    /// <summary>An axis of angles in degrees.</summary>
    public PlotAxis AngleAxis(string title, int decimals = 1) => new(reader[title], "°", decimals);

    /// <summary>An axis of bare ratios.</summary>
    public PlotAxis RatioAxis(string title, int decimals) => new(reader[title], "", decimals);

    /// <summary>An axis of shares in per cent.</summary>
    public PlotAxis PercentAxis(string title) => new(reader[title], "%", 0);

    /// <summary>An axis of frequencies.</summary>
    public PlotAxis FrequencyAxis(string title) => new(reader[title], "Hz", 0);
}
