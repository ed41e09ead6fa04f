namespace Finwright.Geometry.Files;

/// <summary>Numbers points in order of first appearance, giving equal points the same number.</summary>
/// <param name="capacity">Expected number of points.</param>
internal sealed class VertexWelder(int capacity)
{
    private readonly Dictionary<(float, float, float), int> _numbers = new(capacity);
    private readonly List<float> _vertices = new(3 * capacity);

    /// <summary>x, y, z of each point met so far.</summary>
    public float[] Vertices => [.. _vertices];

    /// <summary>Number of a point; a new one when it was not met before.</summary>
    public int Add(float x, float y, float z)
    {
        // Adding zero turns -0 into +0, so that both are written alike.
        (float, float, float) point = (x + 0f, y + 0f, z + 0f);
        if (!_numbers.TryGetValue(point, out int number))
        {
            number = _numbers.Count;
            _numbers.Add(point, number);
            _vertices.AddRange([point.Item1, point.Item2, point.Item3]);
        }

        return number;
    }
}
