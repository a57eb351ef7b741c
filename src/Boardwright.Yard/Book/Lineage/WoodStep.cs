using Boardwright.Quantities;
using Boardwright.Wood;

namespace Boardwright.Yard.Book.Lineage;

/// <summary>The forms wood takes on its way through the yard.</summary>
public enum WoodForm
{
    Log,
    Stack,
    InKiln,
    FromKiln,
    Dressed,
    Pack,
    Pour,
    Taken,
    Shipped,
}

/// <summary>Wood in one form: a log, a stack as built, the same stack out of a kiln, a pack, a load that left.</summary>
/// <param name="Key">Its name among the steps: a stack that was dried is two steps, "S-07" and "S-07 from D-41".</param>
/// <param name="Tag">What is written on it.</param>
/// <param name="Form">What it is.</param>
/// <param name="At">Since when it is that.</param>
public sealed record WoodStep(string Key, string Tag, WoodForm Form, DateTime At)
{
    /// <summary>Footage in this form, board feet: of a log what was sawn from it, of boards their tally then.</summary>
    public required double Bf { get; init; }

    /// <summary>Of that, what is still in this form.</summary>
    public double LeftBf { get; init; }

    /// <summary>What was written off without going anywhere: falldown and miscounts found at a count, or when the stack was said to be empty. Less than nothing where a count found more.</summary>
    public double LostBf { get; init; }

    /// <summary>Species as the book has it now; null for a load of several.</summary>
    public Species? Species { get; init; }

    /// <summary>Mean moisture, as last measured in this form.</summary>
    public MoistureContent? Moisture { get; init; }

    /// <summary>How and when that was measured.</summary>
    public string? MoistureBasis { get; init; }

    /// <summary>The charge it is in or came from.</summary>
    public string? Charge { get; init; }

    /// <summary>What else a person should know: source of a log, customer of a load.</summary>
    public string? Note { get; init; }

    /// <summary>The entry that tells of it.</summary>
    public required long Entry { get; init; }
}

/// <summary>Wood going from one form into the next.</summary>
/// <param name="From">Key of the step before.</param>
/// <param name="To">Key of the step after.</param>
/// <param name="Bf">Footage that went, measured before the change: what was dried, not what came out.</param>
/// <param name="Share">Part of what the step before had cost that went with it, 0 to 1: settled when the wood goes, by what lay there then.</param>
public sealed record WoodFlow(string From, string To, double Bf, double Share);
