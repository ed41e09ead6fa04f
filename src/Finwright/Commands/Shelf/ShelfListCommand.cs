namespace Finwright.Commands.Shelf;

/// <summary>Lists the shelf.</summary>
internal sealed class ShelfListCommand : ShelfListing
{
    public ShelfListCommand()
        : base("list", "List the designs on the shelf: their latest revision, how many builds were made, tags and note.", "finwright shelf list")
    {
    }
}
