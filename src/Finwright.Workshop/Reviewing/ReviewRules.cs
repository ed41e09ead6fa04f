using Finwright.Design;
using Finwright.Strength.Bench;
using Finwright.Workshop.Builds;
using Finwright.Workshop.Comparing;

namespace Finwright.Workshop.Reviewing;

/// <summary>Which assumption was off: rules of the bench (common practice and judgement, no source), each told with its numbers.</summary>
internal static class ReviewRules
{
    // Density of what takes another's place, g/ml: printed PETG (from memory).
    private const double PlasticDensity = 1.27;

    // Readings of one fin agree with their common factor within this many standard deviations, or it is no common factor.
    private const double EvenScatter = 2;

    // What readings of one fin differ by anyhow, relative: reading a ruler, and a fin that is no model (judgement).
    private const double LeastScatter = 0.02;

    // Inner and outer readings that differ by less than this say nothing of the root (judgement).
    private const double LeastRootShare = 0.06;

    // Air or bath this much warmer than planned explains a warmer peak, K (judgement).
    private const double WarmerThanPlanned = 2;

    /// <summary>Everything that the measurements say together.</summary>
    public static IReadOnlyList<ReviewRemark> Of(Build build, FinDesign? design, IReadOnlyList<ReviewLine> lines, IReadOnlyList<ReadingReview> readings)
    {
        List<ReviewRemark> remarks = [];
        ReviewLine Line(string key) => lines.First(line => line.Key == key);
        ReviewLine plastic = Line(ResultKeys.Plastic), resin = Line(ResultKeys.ResinPoured), mass = Line(ResultKeys.FinMass);
        ReviewLine? inFin = lines.FirstOrDefault(line => line.Key == ResultKeys.ResinMass);
        Plastic(plastic, inFin is { State: not ReviewState.NotPredicted } ? inFin : resin, remarks);
        Resin(plastic, resin, inFin, remarks);
        Mass(mass, plastic, resin, inFin, remarks);
        Time(Line(ResultKeys.PrintTime), remarks);
        Peak(Line(ResultKeys.Peak), build, design, remarks);
        Cost(Line(ResultKeys.Cost), plastic, resin, remarks);
        Stiffness(readings, remarks);
        return remarks;
    }

    /// <summary>Mean of read over predicted, weighted as in the rules; null without readings that tell.</summary>
    public static double? MeanRatio(IReadOnlyList<ReadingReview> readings, BenchQuantity quantity) =>
        Mean.Of(readings.Where(own => own.Quantity == quantity)) is { } mean ? Math.Exp(mean.Log) : null;

    private static void Plastic(ReviewLine plastic, ReviewLine resin, List<ReviewRemark> remarks)
    {
        if (!plastic.IsOff)
            return;
        double off = plastic.Measured!.Value - plastic.Predicted!.Value;
        string by = $"The plastic weighs {Against(plastic)}";
        bool more = off > 0;
        if (resin.IsOff && (resin.Measured > resin.Predicted) != more)
        {
            double room = Math.Abs(off) / PlasticDensity;
            remarks.Add(new("plastic-in-place-of-resin", $"{by}, and of resin there is {(more ? "less" : "more")} ({Against(resin)}): {room:0} ml of plastic {(more ? "stand where resin was to go" : "are missing, and resin went there")}. The share of infill or the flow was {(more ? "greater" : "less")} than set. Weigh a printed cube of known size, and correct the flow or print.infill_percent."));
        }
        else if (resin.State is ReviewState.Within)
        {
            remarks.Add(new("flow-or-walls", $"{by}, while the resin is as expected: the pores are as planned, so it lies in the walls, or beside the fin. {(more ? "Flow too high, a wall more than set, or brim, purge and supports weighed along" : "Flow too low, or a wall less than set")}. Measure the thickness of a wall."));
        }
        else
        {
            remarks.Add(new("plastic-off", $"{by}. Whether walls or infill take it, the resin would tell{(resin.IsOff ? $", and that is off the same way ({Against(resin)}): look at the scale first" : ", which was not measured")}. Look at flow, walls and infill."));
        }
    }

    private static void Resin(ReviewLine plastic, ReviewLine resin, ReviewLine? inFin, List<ReviewRemark> remarks)
    {
        if (plastic.IsOff && (resin.IsOff || inFin is { IsOff: true }))
            return;
        if (resin.State is ReviewState.Above)
        {
            double more = resin.Measured!.Value - resin.Predicted!.Value;
            remarks.Add(inFin switch
            {
                { State: ReviewState.Above } => new("open-share", $"{more:0} ml more resin were poured than expected, and by weight it is in the fin ({Against(inFin)}): the pores are larger than planned. The share of infill was less than set, or resin went into bores and cavities."),
                { Measured: not null } => new("leak-or-overfill", $"{more:0} ml more resin were poured than expected, and by weight it is not in the fin ({Against(inFin)}): it leaked, or stood higher in the reservoirs. Look for runs at ports and joints."),
                _ => new("resin-more", $"{more:0} ml more resin were poured than expected ({Against(resin)}): a leak, fuller reservoirs, or pores larger than planned. Plastic and finished fin on the scale would tell which."),
            });
        }
        else if (resin.State is ReviewState.Below || inFin is { State: ReviewState.Below })
        {
            ReviewLine low = inFin is { State: ReviewState.Below } ? inFin : resin;
            remarks.Add(inFin is { State: ReviewState.Within } && resin.State is ReviewState.Below
                ? new("reservoirs", $"Less resin was poured than expected ({Against(resin)}), and by weight the fin holds what it should ({Against(inFin)}): less stood in the reservoirs. Make pour.reservoir_ml smaller.")
                : new("air-left", $"There is less resin than the pores should take ({low.Name}: {Against(low)}): air stayed in, or the pores are smaller than planned. Tap on the fin and listen for hollow places; drill there and top up."));
        }
        else if (inFin is { State: ReviewState.Above })
        {
            remarks.Add(new("weight-unexplained", $"By weight there is more in the fin than plastic, resin and hardware explain ({inFin.Name}: {Against(inFin)}): lacquer, filler, or pores larger than planned."));
        }
    }

    private static void Mass(ReviewLine mass, ReviewLine plastic, ReviewLine resin, ReviewLine? inFin, List<ReviewRemark> remarks)
    {
        if (!mass.IsOff || remarks.Exists(remark => remark.Code is "weight-unexplained" or "air-left" or "open-share"))
            return;
        double off = mass.Measured!.Value - mass.Predicted!.Value;
        string by = $"The finished fin weighs {Against(mass)}";
        if (inFin is null && (plastic.Measured is null || resin.Measured is null))
            remarks.Add(new("mass-off", $"{by}. {(plastic.Measured is null ? "Plastic" : "Resin")} was not measured, so it cannot be told where the {Math.Abs(off):0} g {(off > 0 ? "come from" : "are missing")}."));
        else if (plastic.IsOff)
            remarks.Add(new("mass-by-plastic", $"{by}; the plastic alone is {Math.Abs(plastic.Measured!.Value - plastic.Predicted!.Value):0} g {(plastic.Measured > plastic.Predicted ? "more" : "less")} than expected, which explains {(Math.Sign(plastic.Measured.Value - plastic.Predicted.Value) == Math.Sign(off) ? "it, or part of it" : "nothing of it")}."));
        else
            remarks.Add(new("mass-unexplained", $"{by}, though plastic and resin are as expected. {(off > 0 ? "Lacquer, filler or hardware weigh more than taken" : "Some of what was used is not in the fin: brim, supports, resin that ran out")}."));
    }

    private static void Time(ReviewLine time, List<ReviewRemark> remarks)
    {
        if (time.IsOff)
            remarks.Add(new("printer-model", $"The print took {Against(time)}: the printer is {(time.State is ReviewState.Above ? "slower" : "faster")} than print.machine says, or what prepares the file chose other speeds. \"finwright motion\" reads the real ones."));
    }

    private static void Peak(ReviewLine peak, Build build, FinDesign? design, List<ReviewRemark> remarks)
    {
        if (!peak.IsOff)
            return;
        bool hotter = peak.State is ReviewState.Above;
        List<string> known = [];
        if (design is not null)
        {
            Compare("the room", build.RoomCelsius, design.Pour.RoomCelsius);
            if (design.Pour.Cooling is Cooling.WaterBath)
                Compare("the bath", build.BathCelsius, design.Pour.BathCelsius);
        }

        string by = $"The resin reached {Against(peak)}";
        if (known.Count > 0)
            remarks.Add(new("cure-surroundings", $"{by}. {string.Join(" and ", known)}: that alone moves the peak. Enter it in pour, and work the cure out anew."));
        else if (hotter)
            remarks.Add(new("kinetics-or-cooling", $"{by}: the resin reacts faster than its data say, or cooled less well than taken. A cup test tells the two apart (\"finwright resins fit\"). Until then pour in more stages, or in a colder bath."));
        else
            remarks.Add(new("peak-cooler", $"{by}: the thermometer did not lie where it is hottest, the resin reacts more slowly than its data say, or it cooled better. A cup test tells (\"finwright resins fit\")."));

        void Compare(string what, double? measured, double planned)
        {
            if (measured is double own && (hotter ? own - planned : planned - own) > WarmerThanPlanned)
                known.Add($"{char.ToUpperInvariant(what[0])}{what[1..]} was {own:0} °C, the design says {planned:0} °C");
        }
    }

    private static void Cost(ReviewLine cost, ReviewLine plastic, ReviewLine resin, List<ReviewRemark> remarks)
    {
        if (cost.IsOff)
            remarks.Add(new("prices", $"It cost {Against(cost)}. {(plastic.IsOff || resin.IsOff ? "More or less material is part of it; else compare" : "The amounts are not what is off: compare")} the prices of the design (prices) with what you pay."));
    }

    private static void Stiffness(IReadOnlyList<ReadingReview> readings, List<ReviewRemark> remarks)
    {
        (Mean? bends, Mean? twists) = (Mean.Of(readings.Where(own => own.Quantity is BenchQuantity.Deflection)), Mean.Of(readings.Where(own => own.Quantity is BenchQuantity.Twist)));
        foreach (ReadingReview wild in Wild(readings, bends).Concat(Wild(readings, twists)))
            remarks.Add(new("reading-apart", $"The {wild.Against.Name} read at {wild.ReadAtMm:0} mm under {wild.MassKg:0.##} kg at {wild.AtMm:0} mm ({wild.Against.Measured:0.##} {wild.Against.Unit}, expected {wild.Against.Predicted:0.##}) stands apart from the others: read it again before you learn from it."));
        if (bends is { IsEven: true, IsOff: true })
        {
            // What bends farther is less stiff; stiffness goes with the cube of thickness.
            double percent = 100 * (Math.Exp(-bends.Log) - 1), thickness = 100 * (Math.Exp(-bends.Log / 3) - 1);
            string how = percent < 0 ? "softer" : "stiffer";
            remarks.Add(twists is { IsOff: true } && Math.Sign(twists.Log) != Math.Sign(bends.Log)
                ? new("stiffness-and-twist", $"The fin bends {Share(bends)} and twists {Share(twists)}: not one factor. Look at core and rods, and where the weight hung along the chord.")
                : new("stiffness", $"All {bends.Count} deflections are off the same way, {Share(bends)}: the fin as a whole is {Math.Abs(percent):0} % {how} than expected. Stiffness of walls and core (material, number of walls, infill), or the thickness: {Math.Abs(thickness):0.#} % {(percent < 0 ? "thinner" : "thicker")} does the same. \"finwright bench learn\" takes it into further predictions."));
        }

        if (Root(readings) is { } root)
            remarks.Add(root);
        if (twists is { IsOff: true } && bends is null or { IsOff: false })
            remarks.Add(new("twist-only", $"It twists {Share(twists)}{(bends is null ? "" : ", while it bends as expected")}: the core's stiffness in shear, where rods lie along the chord, or where the weight really hung. {(twists.Log > 0 ? "A core that did not fill twists more" : "Rods farther apart twist less")}."));
    }

    /// <summary>Whether readings near the root are off more than those farther out.</summary>
    private static ReviewRemark? Root(IReadOnlyList<ReadingReview> readings)
    {
        ReadingReview[] bends = [.. readings.Where(own => own.Quantity is BenchQuantity.Deflection && own.LogRatio is not null)];
        if (bends.Length < 4)
            return null;
        double middle = bends.Select(own => own.ReadShare).Order().ElementAt(bends.Length / 2);
        (ReadingReview[] inner, ReadingReview[] outer) = ([.. bends.Where(own => own.ReadShare < middle)], [.. bends.Where(own => own.ReadShare >= middle)]);
        if (inner.Length < 2 || outer.Length < 2 || Mean.Of(inner) is not { } near || Mean.Of(outer) is not { } far)
            return null;
        double apart = near.Log - far.Log;
        return Math.Abs(apart) > Math.Max(LeastRootShare, 2 * double.Hypot(near.Deviation, far.Deviation))
            ? new("root-hold", $"Near the root it moves {Share(near)}, farther out {Share(far)}: the root gives {(apart > 0 ? "more" : "less")} than taken. Check how it was held (--root), and read close to the hull plane as well.")
            : null;
    }

    private static IEnumerable<ReadingReview> Wild(IReadOnlyList<ReadingReview> readings, Mean? mean) => mean is null or { Count: < 3 }
        ? []
        : readings.Where(own => own.Quantity == mean.Quantity && own.LogRatio is var (log, deviation) && Math.Abs(log - mean.Log) > 3 * double.Hypot(deviation, Math.Max(LeastScatter, mean.TypicalScatter)));

    private static string Against(ReviewLine line) => $"{Number(line, line.Measured)} {line.Unit} against {Number(line, line.Predicted)}{(line is { Low: double low, High: double high } ? $" ({Number(line, low)} to {Number(line, high)})" : "")}";

    private static string Number(ReviewLine line, double? value) => value is double number ? number.ToString("F" + line.Decimals, System.Globalization.CultureInfo.InvariantCulture) : "-";

    private static string Share(Mean mean) => $"{Math.Abs(100 * (Math.Exp(mean.Log) - 1)):0} % {(mean.Log > 0 ? "more" : "less")} than expected";

    /// <summary>What readings of one kind have in common: the mean of ln(read / predicted), weighted by the doubt of the readings.</summary>
    private sealed record Mean(BenchQuantity Quantity, int Count, double Log, double Deviation, double Allowed, double Scatter, double TypicalScatter)
    {
        public bool IsOff => Math.Abs(Log) > double.Hypot(Allowed, 2 * Deviation);

        public bool IsEven => Scatter < EvenScatter;

        public static Mean? Of(IEnumerable<ReadingReview> readings)
        {
            ReadingReview[] own = [.. readings.Where(reading => reading.LogRatio is not null)];
            if (own.Length == 0)
                return null;
            double weights = 0, sum = 0, allowed = 0;
            foreach (ReadingReview reading in own)
            {
                (double log, double deviation) = reading.LogRatio!.Value;
                double weight = Weight(deviation);
                ReviewLine line = reading.Against;
                weights += weight;
                sum += weight * log;
                allowed += weight * (line.High!.Value - line.Low!.Value) / (2 * Math.Abs(line.Predicted!.Value));
            }

            double mean = sum / weights, square = own.Sum(reading => Weight(reading.LogRatio!.Value.Deviation) * (reading.LogRatio.Value.Value - mean) * (reading.LogRatio.Value.Value - mean));
            // The middle distance from the mean: one wild reading does not make the others look scattered.
            double typical = 1.5 * own.Select(reading => Math.Abs(reading.LogRatio!.Value.Value - mean)).Order().ElementAt(own.Length / 2);
            return new(own[0].Quantity, own.Length, mean, 1 / Math.Sqrt(weights), allowed / weights, Math.Sqrt(square / Math.Max(1, own.Length - 1)), typical);
        }

        private static double Weight(double deviation) => 1 / (deviation * deviation + LeastScatter * LeastScatter);
    }
}
