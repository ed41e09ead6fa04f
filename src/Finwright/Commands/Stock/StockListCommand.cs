namespace Finwright.Commands.Stock;

/// <summary>Lists the stock.</summary>
internal sealed class StockListCommand : StockListing
{
    public StockListCommand()
        : base("list", "List what is in stock, how much is left, and what is past its date.", "finwright stock list")
    {
    }
}
