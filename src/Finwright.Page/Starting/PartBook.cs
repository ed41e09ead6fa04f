using Finwright.Design;
using Finwright.Geometry;
using Finwright.Page.Hosting;

namespace Finwright.Page.Starting;

/// <summary>Parts that came as meshes, while the page runs: the last few, each under a name that nobody can guess.</summary>
public sealed class PartBook
{
    private const int Most = 6;

    private readonly Lock _gate = new();
    private readonly List<PartOnPage> _parts = [];

    /// <summary>Puts a part into the book.</summary>
    /// <param name="name">Name of the part.</param>
    /// <param name="mesh">The mesh, z up as it is printed, metres.</param>
    /// <returns>Where it is found.</returns>
    public string Add(string name, TriangleMesh mesh)
    {
        string id = UnguessableName.New(bytes: 8);
        lock (_gate)
        {
            _parts.Add(new(id, name, mesh));
            if (_parts.Count > Most)
                _parts.RemoveAt(0);
        }

        return id;
    }

    /// <summary>A part; null when it is not there, or no longer.</summary>
    public PartOnPage? Find(string id)
    {
        lock (_gate)
            return _parts.Find(part => string.Equals(part.Id, id, StringComparison.Ordinal));
    }
}

/// <summary>A part that came as a mesh.</summary>
/// <param name="Id">Where it is found.</param>
/// <param name="Name">Its name.</param>
/// <param name="Mesh">The mesh, metres.</param>
public sealed record PartOnPage(string Id, string Name, TriangleMesh Mesh)
{
    /// <summary>How it is printed, poured and cured.</summary>
    public PartSettings Settings { get; set; } = new();

    /// <summary>What was drawn of it last: what each shows, and the figure as SVG.</summary>
    public IReadOnlyList<(string What, byte[] Svg)> Figures { get; set; } = [];
}
