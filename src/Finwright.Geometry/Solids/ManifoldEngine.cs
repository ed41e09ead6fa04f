using System.Reflection;
using Microsoft.ClearScript;
using Microsoft.ClearScript.JavaScript;
using Microsoft.ClearScript.V8;

namespace Finwright.Geometry.Solids;

/// <summary>
/// One script engine with the Manifold library (WebAssembly) loaded, and the operations on it that the kernel needs.
/// Solids are integer handles, lengths millimetres. Any <see cref="ScriptEngineException"/> out of it means that the
/// engine may be damaged and must be thrown away.
/// </summary>
/// <remarks>
/// Millimetres, because the library's polygon clipper works on a fixed grid of 1.5e-8 units: 0.015 nm here, but 15 nm
/// if the unit were the metre. The solids themselves are indifferent to the unit: coordinates go in and come out with
/// 24 significant bits.
/// </remarks>
internal sealed class ManifoldEngine : IDisposable
{
    private static readonly Lazy<string> Library = new(() => Text("manifold.js"));
    private static readonly Lazy<string> BridgeCode = new(() => Text("ManifoldBridge.js"));
    private static readonly Lazy<byte[]> Wasm = new(() => Bytes("manifold.wasm"));

    private readonly V8ScriptEngine _engine;
    private readonly ScriptObject _bridge;

    /// <summary>Starts the engine and loads the library.</summary>
    /// <param name="memoryBytes">Greatest size of the memory that holds the solids.</param>
    public ManifoldEngine(long memoryBytes)
    {
        _engine = ScriptRuntime.CreateEngine();
        try
        {
            _engine.DocumentSettings.AddSystemDocument("manifold.js", ModuleCategory.Standard, Library.Value);
            _engine.Execute(new DocumentInfo("ManifoldBridge.js") { Category = ModuleCategory.Standard }, BridgeCode.Value);
            _bridge = (ScriptObject)_engine.Global["finwright"];
            using (ITypedArray<byte> wasm = Send<byte>("bytes", Wasm.Value))
                _bridge.InvokeMethod("start", wasm, (double)memoryBytes);
            // Loading is a chain of promises without any outside event; it has run to its end when the next call returns.
            _engine.Execute("void 0");
            if (_bridge["state"] is not "ready")
                throw new SolidException($"The solid kernel did not start: {_bridge["failure"]}");
        }
        catch
        {
            ScriptRuntime.Remove(_engine);
            throw;
        }
    }

    /// <summary>Size of the memory that holds the solids; it never shrinks.</summary>
    public long MemoryBytes => Convert.ToInt64(_bridge.InvokeMethod("memoryBytes"), null);

    /// <summary>Whether an allocation was refused because of the limit.</summary>
    public bool OutOfMemory => _bridge["outOfMemory"] is true;

    /// <summary>Number of solids held.</summary>
    public int SolidCount => Integer(_bridge.InvokeMethod("count"));

    /// <summary>Stops whatever runs, from another thread. The engine must be thrown away afterwards.</summary>
    public void Interrupt() => _engine.Interrupt();

    /// <summary>Frees every solid.</summary>
    public void Release() => _bridge.InvokeMethod("release");

    /// <summary>A solid from a closed mesh.</summary>
    public int Mesh(float[] coordinates, uint[] corners)
    {
        using ITypedArray<float> points = Send<float>("floats", coordinates);
        using ITypedArray<uint> triangles = Send<uint>("integers", corners);
        return Integer(_bridge.InvokeMethod("mesh", points, triangles));
    }

    /// <summary>A prism along z, and the area that its rings really fill.</summary>
    public (int Solid, double FilledArea) Prism(double[] points, uint[] lengths, double height)
    {
        using ITypedArray<double> flat = Send<double>("doubles", points);
        using ITypedArray<uint> counts = Send<uint>("integers", lengths);
        double area = Number(_bridge.InvokeMethod("prism", flat, counts, height));
        return (SolidCount - 1, area);
    }

    /// <summary>Several solids combined.</summary>
    public int Combine(Combination how, uint[] solids)
    {
        string method = how switch
        {
            Combination.Union => "union",
            Combination.Difference => "difference",
            Combination.Intersection => "intersection",
            _ => throw new ArgumentOutOfRangeException(nameof(how), how, "There is no such combination."),
        };
        using ITypedArray<uint> handles = Send<uint>("integers", solids);
        return Integer(_bridge.InvokeMethod(method, handles));
    }

    /// <summary>A solid moved by a 4 × 4 matrix, column by column.</summary>
    public int Place(int solid, double[] matrix)
    {
        using ITypedArray<double> columns = Send<double>("doubles", matrix);
        return Integer(_bridge.InvokeMethod("place", solid, columns));
    }

    /// <summary>The part of a solid in front of a plane.</summary>
    public int Trim(int solid, Point3 normal, double offset) =>
        Integer(_bridge.InvokeMethod("trim", solid, normal.X, normal.Y, normal.Z, offset));

    /// <summary>Carries out what is pending and says how it went; "NoError" when well.</summary>
    public string Status(int solid) => (string)_bridge.InvokeMethod("status", solid);

    /// <summary>Number of triangles.</summary>
    public int Triangles(int solid) => Integer(_bridge.InvokeMethod("triangles", solid));

    /// <summary>Enclosed volume, mm³.</summary>
    public double Volume(int solid) => Number(_bridge.InvokeMethod("volume", solid));

    /// <summary>Volume of each shell, mm³, in the library's order.</summary>
    public double[] PieceVolumes(int solid)
    {
        using var volumes = (ITypedArray<double>)_bridge.InvokeMethod("pieceVolumes", solid);
        return volumes.ToArray();
    }

    /// <summary>The mesh of a solid: coordinates, corners, and pairs of vertices that are one point.</summary>
    public (float[] Coordinates, uint[] Corners, uint[] MergeFrom, uint[] MergeTo) Read(int solid)
    {
        using var mesh = (ScriptObject)_bridge.InvokeMethod("read", solid);
        return (Values<float>(mesh, "vertProperties"), Values<uint>(mesh, "triVerts"), Values<uint>(mesh, "mergeFromVert"), Values<uint>(mesh, "mergeToVert"));
    }

    /// <summary>Slices, flattened: for each height the number of rings, and for each ring its number of points and their x, y.</summary>
    public double[] Slices(int solid, double[] heights) => Sweep("slices", solid, heights);

    /// <summary>For each height the signed area of the rings and the area that they fill, mm².</summary>
    public double[] SliceAreas(int solid, double[] heights) => Sweep("sliceAreas", solid, heights);

    /// <inheritdoc/>
    public void Dispose()
    {
        _bridge.Dispose();
        ScriptRuntime.Remove(_engine);
    }

    private double[] Sweep(string method, int solid, double[] heights)
    {
        using ITypedArray<double> at = Send<double>("doubles", heights);
        using var flat = (ITypedArray<double>)_bridge.InvokeMethod(method, solid, at);
        return flat.ToArray();
    }

    private ITypedArray<T> Send<T>(string maker, T[] values)
        where T : unmanaged
    {
        var array = (ITypedArray<T>)_bridge.InvokeMethod(maker, values.Length);
        if (values.Length > 0)
            array.Write(values, 0, (ulong)values.Length, 0);
        return array;
    }

    private static T[] Values<T>(ScriptObject mesh, string name)
        where T : unmanaged
    {
        using var array = (ITypedArray<T>)mesh[name];
        return array.ToArray();
    }

    private static int Integer(object value) => Convert.ToInt32(value, null);

    private static double Number(object value) => Convert.ToDouble(value, null);

    private static string Text(string resource)
    {
        using StreamReader reader = new(Open(resource));
        return reader.ReadToEnd();
    }

    private static byte[] Bytes(string resource)
    {
        using Stream stream = Open(resource);
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static Stream Open(string resource) =>
        Assembly.GetExecutingAssembly().GetManifestResourceStream(resource)
        ?? throw new InvalidOperationException($"{resource} is not embedded in this build.");
}
