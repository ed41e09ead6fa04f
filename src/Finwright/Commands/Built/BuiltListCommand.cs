namespace Finwright.Commands.Built;

/// <summary>Lists the builds.</summary>
internal sealed class BuiltListCommand : BuiltListing
{
    public BuiltListCommand()
        : base("list", "List the fins that you made, the latest first.", "finwright built list")
    {
    }
}
