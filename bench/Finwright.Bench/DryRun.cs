namespace Finwright.Bench;

/// <summary>Whether this run only sees that every benchmark still works: one fin and small files are then enough.</summary>
internal static class DryRun
{
    /// <summary>Set before the benchmarks are looked for.</summary>
    public static bool IsOn { get; set; }
}
