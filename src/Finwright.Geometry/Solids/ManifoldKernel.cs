using Microsoft.ClearScript;

namespace Finwright.Geometry.Solids;

/// <summary>
/// The solid kernel on the Manifold library, run as WebAssembly inside a script engine: no native geometry library to
/// install, the same bits on every platform, and damage stays inside an engine that can be thrown away.
/// </summary>
/// <remarks>
/// <para>The engine is started by the first call and replaced after a failure, a cancellation, many calls or much memory;
/// the call that failed is tried once more on a fresh engine. Calls wait for one another, also those of
/// other kernels in the process (<see cref="ScriptRuntime"/> says why).</para>
/// <para>Mesh coordinates keep 24 significant bits (a relative 6e-8); prisms, placements and the work in between are in double precision.</para>
/// </remarks>
/// <param name="limits">What the kernel may use; ordinary limits when null.</param>
public sealed class ManifoldKernel(KernelLimits? limits = null) : ISolidKernel
{
    /// <summary>Calls after which an engine is replaced. Nothing is known to leak; this bounds what is not known.</summary>
    private const int CallsPerEngine = 1000;

    /// <summary>WebAssembly memory never shrinks: an engine that grew beyond this is not kept.</summary>
    private const long KeptMemoryBytes = 256 << 20;

    /// <summary>Largest relative difference between the area of a prism's rings and the area they fill.</summary>
    private const double RingAreaTolerance = 1e-6;

    private const double Metres = 1 / SolidProgram.Millimetres;

    private readonly KernelLimits _limits = limits ?? new KernelLimits();
    private int _calls;
    private bool _disposed;

    /// <summary>Number of engines started so far.</summary>
    internal int EngineCount { get; private set; }

    /// <summary>The engine in use; null before the first call and after a damaged or large one was let go.</summary>
    internal ManifoldEngine? Engine { get; private set; }

    /// <inheritdoc/>
    public IReadOnlyList<SolidResult> Evaluate(IReadOnlyList<SolidExpression> solids, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(solids);
        SolidProgram program = SolidProgram.Compile(solids, _limits.Triangles);
        return Run(program, (engine, handles) => Array.ConvertAll(handles, h => Read(engine, h)), cancellation);
    }

    /// <inheritdoc/>
    public IReadOnlyList<SliceRings> Slice(SolidExpression solid, IReadOnlyList<double> heights, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(solid);
        double[] at = Heights(heights);
        return Run(
            SolidProgram.Compile([solid], _limits.Triangles),
            (engine, handles) => SliceReader.Rings(heights, engine.Slices(handles[0], at)),
            cancellation);
    }

    /// <inheritdoc/>
    public IReadOnlyList<SliceArea> SliceAreas(SolidExpression solid, IReadOnlyList<double> heights, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(solid);
        double[] at = Heights(heights);
        return Run(
            SolidProgram.Compile([solid], _limits.Triangles),
            (engine, handles) => SliceReader.Areas(heights, engine.SliceAreas(handles[0], at)),
            cancellation);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_disposed)
            return;
        ScriptRuntime.Turn.Wait();
        _disposed = true;
        Discard();
        ScriptRuntime.Turn.Release();
    }

    private T Run<T>(SolidProgram program, Func<ManifoldEngine, int[], T> read, CancellationToken cancellation)
    {
        ScriptRuntime.Turn.Wait(cancellation);
        try
        {
            ObjectDisposedException.ThrowIf(_disposed, this);
            try
            {
                return Attempt(program, read, cancellation);
            }
            catch (ScriptEngineException)
            {
                // Perhaps only what earlier calls left behind: once more from a clean start.
            }

            try
            {
                return Attempt(program, read, cancellation);
            }
            catch (ScriptEngineException failure)
            {
                throw new SolidException($"The solid kernel failed twice: {failure.Message}", failure);
            }
        }
        finally
        {
            ScriptRuntime.Turn.Release();
        }
    }

    private T Attempt<T>(SolidProgram program, Func<ManifoldEngine, int[], T> read, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        ManifoldEngine engine = Engine ??= Start();
        bool sound = false;
        try
        {
            T result;
            // Disposing the registration waits for a running callback, so that no interrupt arrives afterwards.
            using (cancellation.Register(engine.Interrupt))
                result = read(engine, CarryOut(engine, program, cancellation));
            sound = !cancellation.IsCancellationRequested;
            return result;
        }
        catch (ScriptInterruptedException)
        {
            throw new OperationCanceledException(cancellation);
        }
        catch (ScriptEngineException failure) when (engine.OutOfMemory)
        {
            throw new ScriptEngineException($"it needs more than {_limits.MemoryBytes >> 20} MB of memory. Use coarser meshes or fewer features.", failure);
        }
        catch (SolidException)
        {
            sound = !cancellation.IsCancellationRequested;
            throw;
        }
        finally
        {
            if (sound)
                Settle(engine);
            else
                Discard();
        }
    }

    private int[] CarryOut(ManifoldEngine engine, SolidProgram program, CancellationToken cancellation)
    {
        int[] handles = new int[program.Steps.Count];
        for (int i = 0; i < handles.Length; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            SolidStep step = program.Steps[i];
            int handle = handles[i] = Apply(engine, step, handles);
            string status = engine.Status(handle);
            if (!string.Equals(status, "NoError", StringComparison.Ordinal))
                throw new SolidException($"The kernel could not build {step.Name}: {status}.");
            int triangles = engine.Triangles(handle);
            if (triangles > _limits.Triangles)
                throw new SolidException($"The result of {step.Name} has {triangles} triangles, more than the kernel takes ({_limits.Triangles}). Use coarser meshes.");
        }

        return [.. program.Results.Select(r => handles[r])];
    }

    private static int Apply(ManifoldEngine engine, SolidStep step, int[] handles)
    {
        switch (step)
        {
            case MeshStep mesh:
                return engine.Mesh(mesh.Coordinates, mesh.Corners);
            case PrismStep prism:
                (int solid, double filled) = engine.Prism(prism.Points, prism.Lengths, prism.Height);
                if (!(Math.Abs(filled - prism.Area) <= RingAreaTolerance * prism.Area))
                    throw new SolidException($"The rings of a prism cross or overlap: they enclose {prism.Area:g6} mm² by their points but fill {filled:g6} mm².");
                return solid;
            case CombineStep combine:
                return engine.Combine(combine.How, Array.ConvertAll(combine.Operands, o => (uint)handles[o]));
            case PlaceStep place:
                return engine.Place(handles[place.Operand], place.Matrix);
            case TrimStep trim:
                return engine.Trim(handles[trim.Operand], trim.Normal, trim.Offset);
            default:
                throw new ArgumentOutOfRangeException(nameof(step), step, "There is no such step.");
        }
    }

    private static SolidResult Read(ManifoldEngine engine, int handle)
    {
        const double CubicMetres = Metres * Metres * Metres;
        double[] pieces = engine.PieceVolumes(handle);
        Array.Sort(pieces, (a, b) => b.CompareTo(a));
        for (int i = 0; i < pieces.Length; i++)
            pieces[i] *= CubicMetres;
        (float[] coordinates, uint[] corners, uint[] mergeFrom, uint[] mergeTo) = engine.Read(handle);
        return new(MeshReader.Mesh(coordinates, corners, mergeFrom, mergeTo, Metres), engine.Volume(handle) * CubicMetres, pieces);
    }

    private static double[] Heights(IReadOnlyList<double> heights)
    {
        ArgumentNullException.ThrowIfNull(heights);
        double[] at = new double[heights.Count];
        for (int i = 0; i < at.Length; i++)
        {
            if (!double.IsFinite(heights[i]))
                throw new ArgumentException($"Height {i} is {heights[i]}; heights must be finite.", nameof(heights));
            at[i] = heights[i] * SolidProgram.Millimetres;
        }

        return at;
    }

    private ManifoldEngine Start()
    {
        EngineCount++;
        _calls = 0;
        return new(_limits.MemoryBytes);
    }

    /// <summary>After a call that ended well: frees its solids, and lets go of an engine that has served long or grown large.</summary>
    private void Settle(ManifoldEngine engine)
    {
        engine.Release();
        if (++_calls >= CallsPerEngine || engine.MemoryBytes > KeptMemoryBytes)
            Discard();
    }

    private void Discard()
    {
        Engine?.Dispose();
        Engine = null;
    }
}
