namespace Finwright.Workshop.Tests;

/// <summary>A clock that stands still until it is moved.</summary>
internal sealed class ManualTime : TimeProvider
{
    /// <summary>What it shows.</summary>
    public DateTimeOffset Now { get; set; } = new(2027, 3, 1, 10, 11, 12, 123, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
