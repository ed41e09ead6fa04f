using System.Globalization;
using CsCheck;

namespace Finwright;

/// <summary>Random cases that are the same on every run, so that a green tree stays green and a failure can be had again.</summary>
/// <remarks>
/// Case number i comes from a generator seeded with i and FINWRIGHT_SEED (0 when it is not set). To look further than the usual
/// cases, set the seed to another number: <c>FINWRIGHT_SEED=7 ./test.sh</c>.
/// </remarks>
internal static class SteadySampling
{
    private static readonly ulong Seed = ulong.TryParse(Environment.GetEnvironmentVariable("FINWRIGHT_SEED"), CultureInfo.InvariantCulture, out ulong seed) ? seed : 0;

    /// <summary>Checks a statement on random cases, on all cores.</summary>
    /// <param name="cases">What the cases are.</param>
    /// <param name="statement">Throws when it does not hold.</param>
    /// <param name="iter">How many cases.</param>
    /// <param name="print">Shows a case; its own text when null.</param>
    /// <param name="threads">Cores to use; all when not positive.</param>
    public static void Hold<T>(this Gen<T> cases, Action<T> statement, int iter = 100, Func<T, string>? print = null, int threads = -1)
    {
        string?[] failures = new string?[iter];
        Parallel.For(0, iter, new ParallelOptions { MaxDegreeOfParallelism = threads > 0 ? threads : -1 }, i =>
        {
            T value = cases.Generate(new PCG((uint)i, Seed), null, out _);
            try
            {
                statement(value);
            }
            catch (Exception failure)
            {
                failures[i] = $"Case {i} of {iter}, seed {Seed}: {(print is null ? Print(value) : print(value))}\n{failure}";
            }
        });
        string[] failed = [.. failures.OfType<string>()];
        Assert.True(failed.Length == 0, $"{failed.Length} of {iter} cases fail. {failed.FirstOrDefault()}");
    }

    /// <summary>The same for a statement that says whether it holds.</summary>
    public static void Hold<T>(this Gen<T> cases, Func<T, bool> statement, int iter = 100, Func<T, string>? print = null, int threads = -1) =>
        cases.Hold(c => Assert.True(statement(c)), iter, print, threads);

    /// <summary>The same for two values and a statement that says whether it holds.</summary>
    public static void Hold<T1, T2>(this Gen<(T1, T2)> cases, Func<T1, T2, bool> statement, int iter = 100) =>
        cases.Hold(c => Assert.True(statement(c.Item1, c.Item2)), iter);

    /// <summary>The same for three values and a statement that says whether it holds.</summary>
    public static void Hold<T1, T2, T3>(this Gen<(T1, T2, T3)> cases, Func<T1, T2, T3, bool> statement, int iter = 100, int threads = -1) =>
        cases.Hold(c => Assert.True(statement(c.Item1, c.Item2, c.Item3)), iter, threads: threads);

    /// <summary>The same for two values at a time.</summary>
    public static void Hold<T1, T2>(this Gen<(T1, T2)> cases, Action<T1, T2> statement, int iter = 100, Func<(T1, T2), string>? print = null, int threads = -1) =>
        cases.Hold(c => statement(c.Item1, c.Item2), iter, print, threads);

    /// <summary>The same for three values at a time.</summary>
    public static void Hold<T1, T2, T3>(this Gen<(T1, T2, T3)> cases, Action<T1, T2, T3> statement, int iter = 100, Func<(T1, T2, T3), string>? print = null, int threads = -1) =>
        cases.Hold(c => statement(c.Item1, c.Item2, c.Item3), iter, print, threads);

    /// <summary>The same for four values at a time.</summary>
    public static void Hold<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> cases, Action<T1, T2, T3, T4> statement, int iter = 100, Func<(T1, T2, T3, T4), string>? print = null, int threads = -1) =>
        cases.Hold(c => statement(c.Item1, c.Item2, c.Item3, c.Item4), iter, print, threads);

    /// <summary>The same for six values at a time.</summary>
    public static void Hold<T1, T2, T3, T4, T5, T6>(this Gen<(T1, T2, T3, T4, T5, T6)> cases, Action<T1, T2, T3, T4, T5, T6> statement, int iter = 100, int threads = -1) =>
        cases.Hold(c => statement(c.Item1, c.Item2, c.Item3, c.Item4, c.Item5, c.Item6), iter, threads: threads);

    private static string Print<T>(T value) => value is System.Collections.IEnumerable and not string ? Check.Print(value) : $"{value}";
}
