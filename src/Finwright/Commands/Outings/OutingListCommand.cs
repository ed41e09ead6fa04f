namespace Finwright.Commands.Outings;

/// <summary>Lists the outings.</summary>
internal sealed class OutingListCommand : OutingListing
{
    public OutingListCommand()
        : base("list", "List your times on the water, the latest first.", "finwright outing list")
    {
    }
}
