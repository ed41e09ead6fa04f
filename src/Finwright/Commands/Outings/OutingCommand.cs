namespace Finwright.Commands.Outings;

/// <summary>What was sailed; called by itself, it lists the outings.</summary>
internal sealed class OutingCommand : OutingListing
{
    public OutingCommand()
        : base("outing", "Times on the water: what a track says, how the fin felt, and whether one fin was faster than another. Called by itself, it lists them.", "finwright outing")
    {
        Add(new OutingMeasureCommand());
        Add(new OutingAddCommand());
        Add(new OutingListCommand());
        Add(new OutingShowCommand());
        Add(new OutingChangeCommand());
        Add(new OutingDeleteCommand());
        Add(new OutingRestoreCommand());
        Add(new OutingCompareCommand());
    }
}
