namespace Finwright.Workshop.Storing.Rescue;

/// <summary>A row as it was found.</summary>
/// <param name="RowId">Its number in its table.</param>
/// <param name="Values">Its values: null, long, double, string or bytes.</param>
internal sealed record SalvagedRow(long RowId, IReadOnlyList<object?> Values);
