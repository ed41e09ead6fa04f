namespace Finwright.Commands.Shelf;

/// <summary>The designs on the shelf; called by itself, it lists them.</summary>
internal sealed class ShelfCommand : ShelfListing
{
    public ShelfCommand()
        : base("shelf", "The designs you keep, with every revision of them. Called by itself, it lists them.", "finwright shelf --search upright")
    {
        Add(new ShelfListCommand());
        Add(new ShelfAddCommand());
        Add(new ShelfReviseCommand());
        Add(new ShelfShowCommand());
        Add(new ShelfDiffCommand());
        Add(new ShelfTakeCommand());
        Add(new ShelfRenameCommand());
        Add(new ShelfTagCommand());
        Add(new ShelfDeleteCommand());
        Add(new ShelfRestoreCommand());
    }
}
