using Finwright.Geometry.Solids;

namespace Finwright.Geometry.Tests.Solids;

/// <summary>The kernel outlives cancellations, exhaustion and long use.</summary>
public sealed class ManifoldKernelLifeTests
{
    [Fact]
    public async Task Cancelled_call_stops_and_the_next_one_works()
    {
        using ManifoldKernel kernel = new();
        CheckBox(kernel);
        using CancellationTokenSource source = new();
        Task work = Task.Run(() => kernel.Evaluate([Heavy()], source.Token), TestContext.Current.CancellationToken);
        source.CancelAfter(TimeSpan.FromMilliseconds(300));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => work);
        CheckBox(kernel);
    }

    [Fact]
    public void Call_with_a_cancelled_token_does_nothing()
    {
        using ManifoldKernel kernel = new();
        Assert.ThrowsAny<OperationCanceledException>(() => kernel.Evaluate([Box()], new CancellationToken(true)));
        Assert.Equal(0, kernel.EngineCount);
        CheckBox(kernel);
    }

    [Fact]
    public void Memory_that_runs_out_is_reported_with_the_limit_and_the_next_call_works()
    {
        using ManifoldKernel kernel = new(new KernelLimits(MemoryBytes: 32 << 20));
        SolidException failure = Assert.Throws<SolidException>(
            () => kernel.Evaluate([new MeshSolid(SampleMeshes.Ball(0.1, default, 300))], TestContext.Current.CancellationToken));
        Assert.Contains("more than 32 MB", failure.Message, StringComparison.Ordinal);
        CheckBox(kernel);
        // The first engine, one for the second try, and one for the box.
        Assert.Equal(3, kernel.EngineCount);
    }

    [Fact]
    public void Two_hundred_calls_leave_no_solid_and_no_growth()
    {
        using ManifoldKernel kernel = new();
        SolidExpression work = Shapes.Block(default, new(0.05, 0.02, 0.02)).And(new MeshSolid(SampleMeshes.Ball(0.01, default, 8)))
            .Without(Tools.Bore(0.004, new(0.02, 0.01, -0.01), new(0.02, 0.01, 0.03))).TrimmedBy(new(1, 0, 0), -0.005);
        double[] heights = [.. Enumerable.Range(0, 4).Select(i => 0.004 * i + 0.00013)];
        long after = 0;
        for (int call = 0; call < 200; call++)
        {
            kernel.Evaluate([work], TestContext.Current.CancellationToken);
            kernel.Slice(work, heights, TestContext.Current.CancellationToken);
            kernel.SliceAreas(work, heights, TestContext.Current.CancellationToken);
            Assert.Throws<SolidException>(() => kernel.Evaluate([work, new PrismSolid([[new(0, 0), new(1, 0), new(1, 1), new(0.3, -0.2)]], 1)], TestContext.Current.CancellationToken));
            Assert.Equal(0, kernel.Engine!.SolidCount);
            if (call == 20)
                after = kernel.Engine!.MemoryBytes;
        }

        Assert.Equal(after, kernel.Engine!.MemoryBytes);
        Assert.Equal(1, kernel.EngineCount);
    }

    [Fact]
    [Trait("Pace", "long")]
    public void Engine_is_replaced_after_a_thousand_calls()
    {
        using ManifoldKernel kernel = new();
        for (int call = 0; call < 1000; call++)
            kernel.Evaluate([Box()], TestContext.Current.CancellationToken);
        Assert.Null(kernel.Engine);
        CheckBox(kernel);
        Assert.Equal(2, kernel.EngineCount);
    }

    [Fact]
    public async Task Two_kernels_at_once_give_what_one_gives()
    {
        SolidExpression work = new MeshSolid(Shapes.Blade(100, 30)).Without(Tools.Bore(0.003, new(0.02, 0, -0.01), new(0.02, 0, 0.1)));
        TriangleMesh[] meshes = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => Task.Run(
            () =>
            {
                using ManifoldKernel kernel = new();
                TriangleMesh mesh = kernel.Evaluate([work])[0].Mesh;
                for (int i = 0; i < 5; i++)
                    Assert.True(mesh.Coordinates.SequenceEqual(kernel.Evaluate([work])[0].Mesh.Coordinates));
                return mesh;
            },
            TestContext.Current.CancellationToken)));
        Assert.True(meshes[0].Coordinates.SequenceEqual(meshes[1].Coordinates));
        Assert.True(meshes[0].Corners.SequenceEqual(meshes[1].Corners));
    }

    [Fact]
    public async Task One_kernel_serves_callers_from_several_threads()
    {
        using ManifoldKernel kernel = new();
        await Task.WhenAll(Enumerable.Range(1, 8).Select(i => Task.Run(
            () =>
            {
                SolidResult box = kernel.Evaluate([Shapes.Block(default, new(0.01 * i, 0.01, 0.01))])[0];
                Assert.Equal(1e-6 * i, box.Volume, 1e-12 * i);
            },
            TestContext.Current.CancellationToken)));
        Assert.Equal(1, kernel.EngineCount);
    }

    [Fact]
    public void Disposed_kernel_says_so()
    {
        ManifoldKernel kernel = new();
        CheckBox(kernel);
        kernel.Dispose();
        kernel.Dispose();
        Assert.Throws<ObjectDisposedException>(() => kernel.Evaluate([Box()], TestContext.Current.CancellationToken));
    }

    private static SolidExpression Box() => Shapes.Block(default, new(0.01, 0.01, 0.01));

    private static void CheckBox(ManifoldKernel kernel) =>
        Assert.Equal(1e-6, kernel.Evaluate([Box()], TestContext.Current.CancellationToken)[0].Volume, 1e-12);

    /// <summary>Balls that all run through one another: many seconds of work in a single operation.</summary>
    private static UnionSolid Heavy()
    {
        MeshSolid ball = new(SampleMeshes.Ball(0.02, default, 40));
        return new UnionSolid([.. Enumerable.Range(0, 60).Select(i => ball.Placed(Placement.Rotation(new(0.6, 0.8, 0), 0.037 * i).Then(Placement.Shift(new(1e-4 * i, 2e-5 * i * i, 0)))))]);
    }
}
