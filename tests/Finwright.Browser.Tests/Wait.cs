namespace Finwright.Browser.Tests;

/// <summary>Waits for what no assertion of the browser can say.</summary>
internal static class Wait
{
    /// <summary>Waits until something holds; a minute at most: other tests may have the machine.</summary>
    public static async Task Until(Func<Task<bool>> holds)
    {
        using CancellationTokenSource patience = new(TimeSpan.FromSeconds(60));
        while (!await holds())
            await Task.Delay(100, patience.Token);
    }
}
