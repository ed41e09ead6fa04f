using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

/// <summary>Regression: kernels that came and went on several threads could wait for one another for ever.</summary>
public sealed class ManifoldKernelStartTests
{
    [Fact]
    [Trait("Pace", "long")]
    public async Task Kernels_started_and_ended_on_several_threads_all_finish()
    {
        // Threads of their own, so that they really start together.
        Task[] threads = [.. Enumerable.Range(0, 4).Select(_ => Task.Factory.StartNew(
            () =>
            {
                for (int i = 0; i < 40; i++)
                {
                    using ManifoldKernel kernel = new();
                    SolidResult cube = kernel.Evaluate([new PrismSolid([Rings.Rectangle(0.1, 0.1)], 0.1)], CancellationToken.None)[0];
                    Assert.Equal(1e-3, cube.Volume, 9);
                }
            },
            TestContext.Current.CancellationToken,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default))];
        await Task.WhenAll(threads).WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken);
    }
}
