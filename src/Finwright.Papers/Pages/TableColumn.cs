namespace Finwright.Papers.Pages;

/// <summary>A column of a table.</summary>
/// <param name="Title">Its head.</param>
/// <param name="Share">Its share of the width; the shares of all columns are taken together.</param>
/// <param name="IsNumber">Whether its entries stand to the right.</param>
public sealed record TableColumn(string Title, double Share, bool IsNumber = false);
