namespace Finwright.Commands.Stock;

/// <summary>What is in stock; called by itself, it lists it.</summary>
internal sealed class StockCommand : StockListing
{
    public StockCommand()
        : base("stock", "What is there to build with: spools, cans, rods and bolts, with their batches and prices, and how much is left. Called by itself, it lists them.", "finwright stock")
    {
        Add(new StockListCommand());
        Add(new StockAddCommand());
        Add(new StockChangeCommand());
        Add(new StockUseCommand());
        Add(new StockDeleteCommand());
        Add(new StockRestoreCommand());
    }
}
