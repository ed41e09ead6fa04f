namespace Finwright.Geometry.Blades;

/// <summary>The shortest move of a corner that carries each face through it out by its own distance.</summary>
internal struct CornerMove
{
    // Faces whose normals are this close to parallel are one face, and share the mean of their distances by area.
    private const double SameFace = 0.9;

    // A third face nearly in the plane of the first two is met closely enough by them.
    private const double Independent = 0.15;

    private Point3 _first, _second, _third;
    private double _firstBy, _secondBy, _thirdBy, _firstArea, _secondArea;
    private int _faces;

    /// <summary>Adds a face.</summary>
    /// <param name="normal">Unit normal.</param>
    /// <param name="distance">How far out it goes, metres.</param>
    /// <param name="area">Area of the facets that want it so, m².</param>
    public void Carry(Point3 normal, double distance, double area)
    {
        if (_faces > 0 && normal.Dot(_first) > SameFace)
            Share(ref _firstBy, ref _firstArea, distance, area);
        else if (_faces > 1 && normal.Dot(_second) > SameFace)
            Share(ref _secondBy, ref _secondArea, distance, area);
        else if (_faces == 0)
            (_first, _firstBy, _firstArea, _faces) = (normal, distance, area, 1);
        else if (_faces == 1)
            (_second, _secondBy, _secondArea, _faces) = (normal, distance, area, 2);
        else if (_faces == 2)
            (_third, _thirdBy, _faces) = (normal, distance, 3);
    }

    private static void Share(ref double by, ref double area, double distance, double more)
    {
        if (area + more > 0)
            by = (by * area + distance * more) / (area + more);
        area += more;
    }

    /// <summary>The move, by Gram-Schmidt on the normals.</summary>
    public readonly Point3 Result()
    {
        if (_faces == 0)
            return default;
        Point3 move = _firstBy * _first;
        if (_faces == 1)
            return move;
        Point3 across = _second - _second.Dot(_first) * _first;
        double square = across.Dot(across);
        if (square > Independent)
        {
            move += (_secondBy - _second.Dot(move)) / square * across;
            across = 1 / Math.Sqrt(square) * across;
        }
        else
        {
            across = default;
        }

        if (_faces == 2)
            return move;
        Point3 rest = _third - _third.Dot(_first) * _first - _third.Dot(across) * across;
        square = rest.Dot(rest);
        return square > Independent ? move + (_thirdBy - _third.Dot(move)) / square * rest : move;
    }
}
