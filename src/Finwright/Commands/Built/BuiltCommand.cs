namespace Finwright.Commands.Built;

/// <summary>What was built; called by itself, it lists the builds.</summary>
internal sealed class BuiltCommand : BuiltListing
{
    public BuiltCommand()
        : base("built", "The fins that you made: of which revision and batch, what they took, and what went wrong. Called by itself, it lists them.", "finwright built")
    {
        Add(new BuiltListCommand());
        Add(new BuiltShowCommand());
        Add(new BuiltAddCommand());
        Add(new BuiltChangeCommand());
        Add(new BuiltPartCommand());
        Add(new BuiltPhotoCommand());
        Add(new BuiltDeleteCommand());
        Add(new BuiltRestoreCommand());
    }
}
