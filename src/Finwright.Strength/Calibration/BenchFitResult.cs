namespace Finwright.Strength.Calibration;

/// <summary>How a fit ended.</summary>
public enum BenchFitStatus
{
    /// <summary>With an answer.</summary>
    Converged,

    /// <summary>Without: the steps did not come to rest.</summary>
    NotConverged,

    /// <summary>Without: the prediction gave something that is no number.</summary>
    PredictionFailed,
}

/// <summary>How much of the doubt before the bench is left in one direction.</summary>
/// <param name="Direction">The direction in words: a factor, or one against another.</param>
/// <param name="DoubtKept">Standard deviation after over before, 0 to 1: 1 when the readings say nothing about it.</param>
/// <param name="IsTold">Whether the readings tell it: less than 70 % is kept (judgement).</param>
public sealed record BenchDirection(string Direction, double DoubtKept, bool IsTold);

/// <summary>What the bench says about the factors. Factors are those of before (all 1) when there is no answer.</summary>
public sealed record BenchFitResult
{
    /// <summary>How the fit ended.</summary>
    public required BenchFitStatus Status { get; init; }

    /// <summary>The factors.</summary>
    public required IReadOnlyList<double> Factors { get; init; }

    /// <summary>Standard deviations of the factors' logarithms: a factor lies within times or over e^(2 s) in 95 of 100 cases.</summary>
    public required IReadOnlyList<double> LogDeviations { get; init; }

    /// <summary>Covariance of the logarithms, row after row.</summary>
    public required IReadOnlyList<double> LogCovariance { get; init; }

    /// <summary>Predictions with these factors, one a reading.</summary>
    public IReadOnlyList<double> Predictions { get; init; } = [];

    /// <summary>Reading less prediction, in standard deviations of the reading.</summary>
    public IReadOnlyList<double> Residuals { get; init; } = [];

    /// <summary>Readings farther than three of their standard deviations from the prediction: misread, or the model is wrong there.</summary>
    public IReadOnlyList<int> Outliers { get; init; } = [];

    /// <summary>Sum of the squared residuals; about the number of readings when their deviations and the model are right.</summary>
    public double ChiSquare { get; init; }

    /// <summary>Sum of the squared shifts of the factors, in standard deviations of before.</summary>
    public double PriorShift { get; init; }

    /// <summary>Each factor, and each pair of factors against one another.</summary>
    public IReadOnlyList<BenchDirection> Directions { get; init; } = [];

    /// <summary>The mixture of factors that the readings tell least: a unit vector of the factors' logarithms, each over its deviation of before.</summary>
    public IReadOnlyList<double> WeakestDirection { get; init; } = [];

    /// <summary>Standard deviation after over before along it, 0 to 1.</summary>
    public double WeakestDoubtKept { get; init; }

    /// <summary>What the readings leave open, in plain sentences; empty when they tell everything.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Steps taken.</summary>
    public int Iterations { get; init; }

    /// <summary>Lower end of the range in which a factor lies in 95 of 100 cases.</summary>
    public double Low(int factor) => Factors[factor] * Math.Exp(-2 * LogDeviations[factor]);

    /// <summary>Upper end of the range in which a factor lies in 95 of 100 cases.</summary>
    public double High(int factor) => Factors[factor] * Math.Exp(2 * LogDeviations[factor]);
}
