using BridgeForm.Project;

namespace BridgeForm.Output;

/// <summary>What a stock is, for other programs' lists of materials.</summary>
internal static class WoodWords
{
    /// <summary>Species, grade, and what keeps it: <c>southern-pine no1, treated</c>.</summary>
    public static string Of(StockParameters stock) => $"{stock.Species} {stock.Grade}, {Treatment(stock)}";

    /// <summary><c>treated</c>, <c>naturally durable</c> or <c>untreated</c>.</summary>
    public static string Treatment(StockParameters stock) =>
        stock.Treated ? "treated" : stock.Durable ? "naturally durable" : "untreated";
}
