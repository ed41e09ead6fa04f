using System.Runtime.Intrinsics;
using Finwright.Numerics.Differentiation;

namespace Finwright.Water.Sections.Layers;

/// <summary>The way from one station to the next.</summary>
/// <param name="From">Length at the upstream end.</param>
/// <param name="To">Length at the downstream end.</param>
/// <param name="TransitionAt">Latest place at which the layer turns turbulent on the way; null when it does not.</param>
internal readonly record struct Stretch(double From, double To, double? TransitionAt);

/// <summary>One station of a layer from the one before, with the outer flow given.</summary>
internal static class StationSolver
{
    private const int Steps = 25;
    private const double Settled = 1e-8;
    private const double LeastShape = 1.0005;

    // A step may not grow an unknown by more than half, nor shrink it by more than three tenths.
    private const double MostGrowth = 0.5;
    private const double MostShrinkage = -0.3;
    private const double UsualAmplification = 10;

    /// <summary>Solves a station's three equations and the one that holds its speed, or its shape factor where one is given.</summary>
    /// <param name="x">First guess of θ, δ*, third unknown and speed; takes the solution.</param>
    /// <param name="upstream">The station before, known.</param>
    /// <param name="stretch">The way between both.</param>
    /// <param name="kind">Which equations.</param>
    /// <param name="settings">What the side has in common.</param>
    /// <param name="gap">Dead water inside δ*.</param>
    /// <param name="held">Shape factor to hold, with the speed free; 0 to hold the speed.</param>
    /// <returns>Whether the equations hold.</returns>
    public static bool Solve(Span<double> x, in LayerState<Jet12> upstream, in Stretch stretch, LayerKind kind, in LayerSettings settings, double gap, double held)
    {
        Span<Jet12> residual = stackalloc Jet12[LayerEquations.Count];
        Span<double> matrix = stackalloc double[16], right = stackalloc double[4];
        double from = stretch.From, to = stretch.To, speed = x[3];
        for (int step = 0; step < Steps; step++)
        {
            if (stretch.TransitionAt is double trip)
            {
                TransitionInterval.Equations(upstream, x, from, to, 0, Math.Clamp(trip, from, to), settings, residual);
            }
            else
            {
                LayerState<Jet4> here = new(kind, Jet4.Variable(x[0], 0), Jet4.Variable(x[1], 1), Jet4.Variable(x[2], 2), Jet4.Variable(x[3], 3), settings, gap);
                if (kind == LayerKind.Laminar)
                    LayerEquations.Laminar(upstream, here.Downstream(), Jet12.Constant(from), Jet12.Constant(to), Jet12.Constant(0), residual);
                else
                    LayerEquations.Turbulent(upstream, here.Downstream(), Jet12.Constant(from), Jet12.Constant(to), residual);
            }

            for (int q = 0; q < LayerEquations.Count; q++)
            {
                residual[q].Second.CopyTo(matrix[(4 * q)..]);
                right[q] = -residual[q].Value;
            }

            matrix[12..].Clear();
            if (held > 0)
            {
                (matrix[12], matrix[13]) = (-held, 1);
                right[3] = held * x[0] - (x[1] - gap);
            }
            else
            {
                matrix[15] = 1;
                right[3] = speed - x[3];
            }

            if (!SolveFour(matrix, right))
                return false;
            double relax = 1, change = 0;
            for (int i = 0; i < 4; i++)
            {
                double relative = i == 2 && kind == LayerKind.Laminar ? right[i] / UsualAmplification : right[i] / x[i];
                change = Math.Max(change, Math.Abs(relative));
                if (relative > MostGrowth)
                    relax = Math.Min(relax, MostGrowth / relative);
                if (relative < MostShrinkage)
                    relax = Math.Min(relax, MostShrinkage / relative);
            }

            if (!double.IsFinite(change))
                return false;
            for (int i = 0; i < 4; i++)
                x[i] += relax * right[i];
            x[1] = Math.Max(x[1], LeastShape * x[0] + gap);
            if (change < Settled)
                return true;
        }

        return false;
    }

    private static bool SolveFour(Span<double> a, Span<double> b)
    {
        const int N = 4;
        for (int k = 0; k < N; k++)
        {
            int pivot = k;
            for (int i = k + 1; i < N; i++)
                if (Math.Abs(a[i * N + k]) > Math.Abs(a[pivot * N + k]))
                    pivot = i;
            if (!(Math.Abs(a[pivot * N + k]) > 1e-30))
                return false;
            for (int j = 0; j < N; j++)
                (a[k * N + j], a[pivot * N + j]) = (a[pivot * N + j], a[k * N + j]);
            (b[k], b[pivot]) = (b[pivot], b[k]);
            for (int i = k + 1; i < N; i++)
            {
                double factor = a[i * N + k] / a[k * N + k];
                for (int j = k; j < N; j++)
                    a[i * N + j] -= factor * a[k * N + j];
                b[i] -= factor * b[k];
            }
        }

        for (int i = N - 1; i >= 0; i--)
        {
            for (int j = i + 1; j < N; j++)
                b[i] -= a[i * N + j] * b[j];
            b[i] /= a[i * N + i];
        }

        return true;
    }
}
