namespace Boardwright.Web.Drawings;

/// <summary>What one amount turns into, to scale.</summary>
public sealed record PartsBarDrawing(string Title, string Unit, IReadOnlyList<AmountPart> Parts);

/// <summary>A part of an amount.</summary>
/// <param name="Words">What becomes of it.</param>
/// <param name="Amount">In the bar's unit.</param>
/// <param name="Use">How it is drawn.</param>
/// <param name="Species">Pattern of a part that is wood sold or used; not needed otherwise.</param>
public sealed record AmountPart(string Words, double Amount, PartUse Use, string? Species = null);

/// <summary>How a part is drawn.</summary>
public enum PartUse
{
    /// <summary>Spoken for: the wood's own pattern.</summary>
    Wood,

    /// <summary>Free: plain.</summary>
    Spare,

    /// <summary>Lost on the way, such as shrinkage: slanted hatch.</summary>
    Lost,

    /// <summary>Set aside, such as falldown: upright hatch.</summary>
    Aside,
}
