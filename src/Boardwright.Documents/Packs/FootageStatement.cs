namespace Boardwright.Documents.Packs;

/// <summary>What every paper with a footage says about it.</summary>
/// <remarks>Kiln-dried hardwood is sold on its footage as measured after drying; nothing may be added back for shrinkage: source
/// ncwm-1977, mark P.</remarks>
internal static class FootageStatement
{
    public const string Net = "Net footage: the wood as measured now. Nothing is added for shrinkage in drying.";

    public const string Gross = "Gross footage: measured before drying. Not to be billed as dry footage.";
}
