using Finwright.Geometry;
using Finwright.Geometry.Files;
using Finwright.Terminal;

namespace Finwright.Commands;

/// <summary>Reading a mesh that a command is given in place of a design.</summary>
internal static class MeshFile
{
    private static readonly string[] Endings = [".stl", ".3mf"];

    /// <summary>Whether a file is taken for a mesh, by its ending.</summary>
    public static bool IsMesh(string file) => Endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads a mesh.</summary>
    /// <returns>The mesh, metres, z up as it is printed.</returns>
    /// <exception cref="WrongInputException">It cannot be read.</exception>
    public static TriangleMesh Read(string file)
    {
        if (Directory.Exists(file))
            throw new WrongInputException($"\"{file}\" is a folder.", "Name the mesh file in it.");
        try
        {
            using FileStream stream = File.OpenRead(file);
            return string.Equals(Path.GetExtension(file), ".3mf", StringComparison.OrdinalIgnoreCase) ? Only(ThreeMfFile.Read(stream), file) : StlFile.Read(stream);
        }
        catch (FileFormatException problem)
        {
            throw new WrongInputException($"\"{file}\" cannot be used. {problem.Message}", "Export the part again as STL or 3MF.");
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            string why = problem is FileNotFoundException or DirectoryNotFoundException ? "There is no such file." : problem.Message;
            throw new WrongInputException($"\"{file}\" cannot be read. {why}", "Check the path.");
        }
    }

    private static TriangleMesh Only(ThreeMfDocument document, string file) => document.Parts is [{ } part]
        ? part.Mesh.Placed(part.Placement)
        : throw new WrongInputException($"\"{file}\" holds {document.Parts.Count} parts: {string.Join(", ", document.Parts.Select(p => $"\"{p.Name}\"").Take(6))}.", "Export the part alone.");
}
