using System.Numerics;
using System.Runtime.InteropServices;
using Finwright.Geometry;
using Finwright.Making.Voxels;
using Finwright.Numerics;

namespace Finwright.Making.Pores;

/// <summary>Air that stays in one attitude.</summary>
/// <param name="Attitude">How the part is held.</param>
/// <param name="FeedPort">Number of the port that is the lowest, through which the resin comes; −1 without ports.</param>
/// <param name="Air">Air that stays; the other ports are its vents.</param>
public sealed record AttitudeAir(PourAttitude Attitude, int FeedPort, TrappedAirResult Air);

/// <summary>Two attitudes between which a part is rocked, the feed's tube in the same port.</summary>
/// <param name="First">One attitude.</param>
/// <param name="Second">The other.</param>
/// <param name="Air">Air that leaves in neither.</param>
public sealed record RockingPair(AttitudeAir First, AttitudeAir Second, TrappedAirResult Air);

/// <summary>What holding a part otherwise is worth.</summary>
/// <param name="Now">The attitude asked about.</param>
/// <param name="Best">The attitude that keeps least air.</param>
/// <param name="Pair">The pair that keeps least; null when no pair is better than the best alone by more than the tie rule's share.</param>
/// <param name="Tried">Attitudes tried.</param>
public sealed record AttitudeSearchResult(AttitudeAir Now, AttitudeAir Best, RockingPair? Pair, int Tried);

/// <summary>Finds how to hold a part so that least air stays.</summary>
/// <remarks>
/// <para>All attitudes of <see cref="PourAttitude.Spread"/> are tried on a grid of cells twice as large, the best again on the fine one. In each attitude
/// the lowest port is the feed, which lets no air out while its tube is on; all others are vents.</para>
/// <para>Tie rule: attitudes that keep at most 0.2 % of the pores more than the least are equal; of these the one that is easier to hold wins, then the
/// one that keeps less, then the earlier in the list.</para>
/// </remarks>
public static class AttitudeSearch
{
    /// <summary>Share of the pores by which attitudes must differ to count as different: less than the grid tells (judgement).</summary>
    public const double TieShare = 0.002;

    // Attitudes and pairs that are looked at again on the fine grid.
    private const int FineAttitudes = 6, FinePairs = 3;

    /// <summary>Searches.</summary>
    /// <param name="part">The part on its grid.</param>
    /// <param name="infillShare">Share of the core that is plastic, 0 to 0.95.</param>
    /// <param name="ports">Its ports.</param>
    /// <param name="upNow">Upward direction asked about, layer axes; need not be of unit length.</param>
    /// <param name="toLayers">From design axes to layer axes.</param>
    /// <param name="alike">Share of the pores by which two attitudes may differ and still count as equal, so that the one easier to hold wins.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static AttitudeSearchResult Search(PartVoxels part, double infillShare, IReadOnlyList<PourPort> ports, Point3 upNow, Placement toLayers, double alike = TieShare, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(ports);
        Require.Between(alike, 0, 1);
        PoreGrid fine = PoreGrid.Create(part, infillShare), coarse = PoreGrid.CreateCoarse(part, infillShare);
        TrappedAir fineAir = new(fine), coarseAir = new(coarse);
        PourAttitude now = PourAttitude.Of(upNow, toLayers);
        IReadOnlyList<PourAttitude> attitudes = [now, .. PourAttitude.Spread(toLayers)];
        float[][] kept = new float[attitudes.Count][];
        double[] held = new double[attitudes.Count];
        for (int i = 0; i < attitudes.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            (int feed, PourPort[] vents) = Roles(ports, attitudes[i].Up);
            ReadOnlySpan<float> fractions = coarseAir.Fractions(attitudes[i].Up, vents);
            kept[i] = new float[coarse.Count];
            for (int cell = 0; cell < coarse.Count; cell++)
                kept[i][cell] = (float)(fractions[cell] * coarse.Share[cell]);
            held[i] = Sum(kept[i], kept[i]);
        }

        // Number 0 is the attitude asked about; it may win as well.
        double slack = alike * coarse.Share.Sum();
        AttitudeAir[] refined = new AttitudeAir[attitudes.Count];
        AttitudeAir Refine(int i) => refined[i] ??= Look(fineAir, ports, attitudes[i]);
        List<int> first = Shortlist(Enumerable.Range(0, attitudes.Count), i => held[i], i => attitudes[i].Practicality, slack, FineAttitudes);
        AttitudeAir best = Choose(first.Select(Refine).Append(Refine(0)), air => air.Air.Volume, air => air.Attitude.Practicality, alike * fine.Volume);
        RockingPair? pair = Pair(attitudes, ports, kept, held, slack, Refine, fineAir, cancellation);
        return new(Refine(0), best, pair is not null && pair.Air.Volume < best.Air.Volume - TieShare * fine.Volume ? pair : null, attitudes.Count);
    }

    /// <summary>The lowest port in an attitude, and the others.</summary>
    public static (int Feed, PourPort[] Vents) Roles(IReadOnlyList<PourPort> ports, Point3 up)
    {
        ArgumentNullException.ThrowIfNull(ports);
        int feed = -1;
        for (int i = 0; i < ports.Count; i++)
            if (feed < 0 || ports[i].Mouth.Dot(up) < ports[feed].Mouth.Dot(up))
                feed = i;
        return (feed, [.. ports.Where((_, i) => i != feed)]);
    }

    private static AttitudeAir Look(TrappedAir air, IReadOnlyList<PourPort> ports, PourAttitude attitude)
    {
        (int feed, PourPort[] vents) = Roles(ports, attitude.Up);
        return new(attitude, feed, air.Solve(attitude.Up, vents, keepCells: true));
    }

    private static RockingPair? Pair(
        IReadOnlyList<PourAttitude> attitudes, IReadOnlyList<PourPort> ports, float[][] kept, double[] held, double slack, Func<int, AttitudeAir> refine, TrappedAir fineAir, CancellationToken cancellation)
    {
        // A tube cannot change ports in the rocking: pairs share their feed.
        int[] feed = [.. attitudes.Select(attitude => Roles(ports, attitude.Up).Feed)];
        List<(int A, int B, double Held)> pairs = [];
        double least = held.Min();
        for (int a = 0; a < attitudes.Count; a++)
        {
            cancellation.ThrowIfCancellationRequested();
            for (int b = a + 1; b < attitudes.Count; b++)
            {
                if (feed[a] != feed[b])
                    continue;
                double both = Sum(kept[a], kept[b]);
                if (both > least + slack)
                    continue;
                least = Math.Min(least, both);
                pairs.Add((a, b, both));
            }
        }

        int Practicality(int i) => attitudes[pairs[i].A].Practicality + attitudes[pairs[i].B].Practicality;
        List<int> chosen = Shortlist(Enumerable.Range(0, pairs.Count).Where(i => pairs[i].Held <= least + slack), i => pairs[i].Held, Practicality, slack, FinePairs);
        List<RockingPair> found = [];
        foreach (int i in chosen)
        {
            AttitudeAir one = refine(pairs[i].A), two = refine(pairs[i].B);
            found.Add(new(one, two, fineAir.Both(one.Air, two.Air)));
        }

        return found.Count is 0 ? null : Choose(found, p => p.Air.Volume, p => p.First.Attitude.Practicality + p.Second.Attitude.Practicality, TieShare * found[0].Air.Total);
    }

    /// <summary>The best few: those equal to the best by ease, then by air, then all others by air.</summary>
    private static List<int> Shortlist(IEnumerable<int> all, Func<int, double> held, Func<int, int> practicality, double slack, int count)
    {
        List<int> items = [.. all];
        if (items.Count is 0)
            return [];
        double least = items.Min(held);
        return [.. items.OrderBy(i => held(i) <= least + slack ? practicality(i) : int.MaxValue).ThenBy(held).ThenBy(i => i).Take(count)];
    }

    private static T Choose<T>(IEnumerable<T> all, Func<T, double> held, Func<T, int> practicality, double slack)
    {
        List<T> items = [.. all];
        double least = items.Min(held);
        return items.Where(item => held(item) <= least + slack).OrderBy(practicality).ThenBy(held).First();
    }

    /// <summary>Sum over cells of the smaller of two.</summary>
    private static double Sum(float[] a, float[] b)
    {
        ReadOnlySpan<Vector<float>> left = MemoryMarshal.Cast<float, Vector<float>>(a), right = MemoryMarshal.Cast<float, Vector<float>>(b);
        double sum = 0;
        int width = Vector<float>.Count;
        // Blocks, so that no float sum grows past where its last digit matters.
        for (int block = 0; block < left.Length; block += 64)
        {
            Vector<float> part = Vector<float>.Zero;
            int end = Math.Min(left.Length, block + 64);
            for (int i = block; i < end; i++)
                part += Vector.Min(left[i], right[i]);
            sum += Vector.Sum(part);
        }

        for (int i = left.Length * width; i < a.Length; i++)
            sum += Math.Min(a[i], b[i]);
        return sum;
    }
}
