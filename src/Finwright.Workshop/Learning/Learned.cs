using Finwright.Design;
using Finwright.Numerics;
using Finwright.Strength.FromDesign;
using Finwright.Workshop.Comparing;
using Finwright.Workshop.Stock;
using Finwright.Workshop.Storing;

namespace Finwright.Workshop.Learning;

/// <summary>What builds taught of one quantity, for fins of a filament and a resin.</summary>
/// <param name="Quantity">What it multiplies.</param>
/// <param name="Factor">The factor, against the values that the design's materials give.</param>
/// <param name="Deviation">Standard deviation of its logarithm, for a fin that was not among the builds.</param>
/// <param name="IsSameBatch">Whether it comes from these very batches; else from others of the same material, and its range is wider.</param>
/// <param name="From">The calibrations that it was joined from.</param>
public sealed record LearnedRatio(LearnedQuantity Quantity, double Factor, double Deviation, bool IsSameBatch, IReadOnlyList<Calibration> From)
{
    /// <summary>The factor with the range that holds it in 95 of 100 cases.</summary>
    public Ranged Range => new(Factor, Factor * Math.Exp(-2 * Deviation), Factor * Math.Exp(2 * Deviation));
}

/// <summary>What earlier builds have taught for fins of one filament and one resin.</summary>
/// <remarks>
/// <para>A calibration holds where its batches are the fin's. Where none does, those of other batches of the same material stand in, with a wider range. Where neither batch nor material is known,
/// nothing is taken over.</para>
/// <para>Several builds are joined on the logarithms of their factors, weighted by what is known of each: w = 1 / (s² + t²), s the standard deviation of one build's logarithm, t the spread
/// between builds (R. DerSimonian and N. Laird, 1986, "Meta-analysis in clinical trials", Controlled Clinical Trials 7, from memory), never below what fins of one batch differ by anyhow. For a fin
/// that was not among them the deviation is that of the mean and t together. The mean of ratios from scale and clock gets better with every build, 1 / Σw; of that of stiffness
/// only the spread does, t² Σw² / (Σw)², beside the weighted mean of s², because readings of every build leave the same open: walls from core.</para>
/// </remarks>
public sealed class Learned
{
    // Standard deviation, relative, by which fins of one batch differ, and of other batches of one material (judgement).
    private static readonly Dictionary<LearnedQuantity, (double SameBatch, double SameMaterial)> Spreads = new()
    {
        [LearnedQuantity.WallStiffness] = (0.03, 0.08),
        [LearnedQuantity.CoreStiffness] = (0.03, 0.08),
        [LearnedQuantity.Plastic] = (0.01, 0.02),
        [LearnedQuantity.Resin] = (0.02, 0.04),
        [LearnedQuantity.PrintTime] = (0.03, 0.05),
    };

    // The plate itself is no better than this, per cent: as with one bench fit by itself.
    private const double LeastPercent = 0.5;

    private Learned(IReadOnlyList<LearnedRatio> ratios) => Ratios = ratios;

    /// <summary>Nothing.</summary>
    public static Learned Nothing { get; } = new([]);

    /// <summary>What was learned, quantity by quantity; a quantity of which nothing is known is missing.</summary>
    public IReadOnlyList<LearnedRatio> Ratios { get; }

    /// <summary>What was learned of one quantity; null when nothing was.</summary>
    public LearnedRatio? this[LearnedQuantity quantity] => Ratios.FirstOrDefault(ratio => ratio.Quantity == quantity);

    /// <summary>What holds for fins of a filament and a resin.</summary>
    /// <param name="store">The store.</param>
    /// <param name="filament">Number of the filament in stock; null when it is not known.</param>
    /// <param name="resin">Number of the resin in stock; null when it is not known.</param>
    /// <param name="except">A build whose own teachings are left out, because it is held against the prediction; null for none.</param>
    public static Learned For(WorkshopStore store, long? filament, long? resin, long? except = null)
    {
        ArgumentNullException.ThrowIfNull(store);
        HashSet<long> builds = [.. store.Builds.List().Select(build => build.Id)], sessions = [.. store.Bench.List().Select(session => session.Id)];
        Calibration[] standing =
        [
            .. store.Calibrations.List().Where(own => own.BuildId is long build && build != except && builds.Contains(build)
                && (own.Sessions.Count > 0 || !IsStiffness(own.Quantity)) && own.Sessions.All(sessions.Contains)),
        ];
        StockBatches stock = new(store);
        List<LearnedRatio> ratios = [];
        foreach (LearnedQuantity quantity in Enum.GetValues<LearnedQuantity>())
        {
            // The latest of each build: learning again takes the place of learning before.
            Calibration[] own = [.. standing.Where(each => each.Quantity == quantity).GroupBy(each => each.BuildId).Select(each => each.Last())];
            Calibration[] same = [.. own.Where(each => stock.Closeness(each.FilamentId, filament) is Likeness.Batch && stock.Closeness(each.ResinId, resin) is Likeness.Batch)];
            Calibration[] like = [.. own.Where(each => stock.Closeness(each.FilamentId, filament) is not Likeness.None && stock.Closeness(each.ResinId, resin) is not Likeness.None)];
            (Calibration[] from, bool isSame) = same.Length > 0 ? (same, true) : (like, false);
            if (from.Length > 0)
                ratios.Add(Joined(quantity, from, isSame));
        }

        return new(ratios);
    }

    /// <summary>The design with the learned stiffness of walls and core in place of its own factors; the rest is as it was.</summary>
    /// <param name="design">The design.</param>
    /// <remarks>What was learned of another batch never makes the range wider than the material's own.</remarks>
    public FinDesign Into(FinDesign design)
    {
        ArgumentNullException.ThrowIfNull(design);
        if (this[LearnedQuantity.WallStiffness] is null && this[LearnedQuantity.CoreStiffness] is null)
            return design;
        FinDesign plain = Plain(design);
        if (MaterialsFromDesign.Of(plain, []) is not { } known)
            return design;
        Materials materials = design.Materials;
        if (this[LearnedQuantity.WallStiffness] is { } wall)
            materials = materials with { WallFactor = Rounded(wall), WallFactorDeviationPercent = Percent(wall, known.WallFactor) };
        if (this[LearnedQuantity.CoreStiffness] is { } core)
            materials = materials with { CoreFactor = Rounded(core), CoreFactorDeviationPercent = Percent(core, known.CoreFactor) };
        return design with { Materials = materials };
    }

    /// <summary>Results with what was learned of plastic, resin and time; stiffness goes into the design (<see cref="Into(FinDesign)"/>).</summary>
    /// <param name="results">Results without calibrations.</param>
    public FinResults Into(FinResults results)
    {
        ArgumentNullException.ThrowIfNull(results);
        if (this[LearnedQuantity.Plastic] is null && this[LearnedQuantity.Resin] is null && this[LearnedQuantity.PrintTime] is null)
            return results;
        ResultLine[] lines = [.. results.Lines.Select(line => QuantityOf(line) is LearnedQuantity quantity && this[quantity] is { } ratio ? Scaled(line, ratio) : line)];
        Ranged? Of(Func<ResultLine, bool> of) => lines.FirstOrDefault(of) is { Value: double value, Low: double low, High: double high } ? new(value, low, high) : null;
        if (Of(line => line.Key == ResultKeys.Plastic) is { } plastic && Of(line => line.Key == ResultKeys.ResinMass) is { } resin && Of(line => line.Key == ResultKeys.HardwareMass) is { } hardware)
        {
            Ranged mass = FinMass.Of(plastic, resin, hardware);
            lines = [.. lines.Select(line => line.Key == ResultKeys.FinMass ? line with { Value = mass.Value, Low = mass.Low, High = mass.High } : line)];
        }

        return results with { Lines = lines };
    }

    /// <summary>The design as its materials are by themselves: calibrations are factors against this.</summary>
    internal static FinDesign Plain(FinDesign design) =>
        design with { Materials = design.Materials with { WallFactor = 1, WallFactorDeviationPercent = null, CoreFactor = 1, CoreFactorDeviationPercent = null } };

    private static LearnedQuantity? QuantityOf(ResultLine line) => line.Key switch
    {
        ResultKeys.PrintTime => LearnedQuantity.PrintTime,
        ResultKeys.Plastic => LearnedQuantity.Plastic,
        ResultKeys.Pores or ResultKeys.ResinInFin or ResultKeys.ResinPoured or ResultKeys.ResinMass => LearnedQuantity.Resin,
        { } key when key.StartsWith("print.", StringComparison.Ordinal) && key.EndsWith(".plastic", StringComparison.Ordinal) => LearnedQuantity.Plastic,
        { } key when key.StartsWith("print.", StringComparison.Ordinal) && key.EndsWith(".time", StringComparison.Ordinal) => LearnedQuantity.PrintTime,
        _ => null,
    };

    // Knowing more does not make less sure: of two ranges the narrower one stands.
    private static ResultLine Scaled(ResultLine line, LearnedRatio ratio)
    {
        if (line is not { Value: double value, Low: double low, High: double high } || !(value > 0))
            return line;
        double now = value * ratio.Factor;
        Ranged range = ratio.Range;
        return line with { Value = now, Low = now * Math.Max(low / value, range.Low / range.Value), High = now * Math.Min(high / value, range.High / range.Value) };
    }

    private static LearnedRatio Joined(LearnedQuantity quantity, Calibration[] from, bool isSameBatch)
    {
        double[] logs = [.. from.Select(own => Math.Log(own.Factor))], variances = [.. from.Select(own => Square(Math.Log(own.High / own.Low) / 4))];
        (double sameBatch, double sameMaterial) = Spreads[quantity];
        double between = Math.Max(Between(logs, variances), Square(isSameBatch ? sameBatch : sameMaterial));
        double[] weights = [.. variances.Select(variance => 1 / (variance + between))];
        double sum = weights.Sum(), mean = weights.Zip(logs, (w, log) => w * log).Sum() / sum;
        double ofMean = IsStiffness(quantity) ? weights.Zip(variances, (w, variance) => w * variance).Sum() / sum + between * weights.Sum(Square) / Square(sum) : 1 / sum;
        return new(quantity, Math.Exp(mean), Math.Sqrt(ofMean + between), isSameBatch, from);
    }

    /// <summary>Variance between builds by the method of moments; 0 when they differ no more than their own doubt explains.</summary>
    private static double Between(double[] logs, double[] variances)
    {
        // An exact build would weigh without end; nothing is known better than to a thousandth.
        double[] weights = [.. variances.Select(variance => 1 / Math.Max(variance, 1e-6))];
        double sum = weights.Sum(), squares = weights.Sum(Square), mean = weights.Zip(logs, (w, log) => w * log).Sum() / sum;
        double scatter = weights.Zip(logs, (w, log) => w * Square(log - mean)).Sum(), room = sum - squares / sum;
        return room > 0 ? Math.Max(0, (scatter - (logs.Length - 1)) / room) : 0;
    }

    private static double Rounded(LearnedRatio ratio) => Math.Clamp(Math.Round(ratio.Factor, 4), 0.2, 5);

    private static double Percent(LearnedRatio ratio, Ranged known) => Math.Clamp(Math.Round(100 * Math.Min(ratio.Deviation, known.RelativeDeviation > 0 ? known.RelativeDeviation : ratio.Deviation), 2), LeastPercent, 100);

    private static bool IsStiffness(LearnedQuantity quantity) => quantity is LearnedQuantity.WallStiffness or LearnedQuantity.CoreStiffness;

    private static double Square(double value) => value * value;

    private enum Likeness
    {
        None,
        Material,
        Batch,
    }

    /// <summary>Looks batches up, deleted ones too, once each.</summary>
    private sealed class StockBatches(WorkshopStore store)
    {
        private readonly Dictionary<long, StockItem> _items = [];

        public Likeness Closeness(long? taught, long? asked)
        {
            // A calibration that names no batch holds for any.
            if (taught is not long from)
                return Likeness.Batch;
            if (asked is not long to)
                return Likeness.None;
            return from == to ? Likeness.Batch : IsLike(Get(from), Get(to)) ? Likeness.Material : Likeness.None;
        }

        // By the material of the library; without one, by the name on the label.
        private static bool IsLike(StockItem one, StockItem other) => one.Material.Length > 0 || other.Material.Length > 0
            ? string.Equals(one.Material, other.Material, StringComparison.OrdinalIgnoreCase)
            : string.Equals(one.Name, other.Name, StringComparison.OrdinalIgnoreCase);

        private StockItem Get(long id) => _items.TryGetValue(id, out StockItem? known) ? known : _items[id] = store.Stock.Get(id);
    }
}
