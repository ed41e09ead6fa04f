namespace Finwright.Workshop.Library;

/// <summary>Something of the maker's own in the library.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Name">What it is called; no two of a kind share a name.</param>
/// <param name="Text">Its file: what <see cref="LibraryFile"/> reads.</param>
/// <param name="MadeAt">When it was kept first.</param>
/// <param name="DeletedAt">When it was deleted; null while it is there.</param>
public sealed record LibraryItem(long Id, LibraryKind Kind, string Name, string Text, DateTimeOffset MadeAt, DateTimeOffset? DeletedAt);
