namespace Boardwright.Yard.UseCases;

/// <summary>One thing to do today: the act, why, the deciding number, what stands to lose, and the one way on.</summary>
/// <param name="At">The hour, place, tag or machine it is about.</param>
/// <param name="Do">A sentence that begins with a verb.</param>
/// <param name="Why">What is known, in one or two sentences.</param>
/// <param name="Much">The deciding number.</param>
/// <param name="Stake">What stands to lose, and how soon.</param>
/// <param name="For">Whose work it is.</param>
/// <param name="Path">The form that starts the act, or the page that answers.</param>
/// <param name="Key">What the key says.</param>
public sealed record DayTask(string At, string Do, string Why, Traced Much, Stake Stake, Duties For, string Path, string Key)
{
    /// <summary>What may go wrong, its first words apart; null for none.</summary>
    public (string First, string Then)? Caution { get; init; }

    /// <summary>The charge whose kiln door is drawn beside it; null for none.</summary>
    public string? Charge { get; init; }

    /// <summary>The log whose end is drawn beside it; null for none.</summary>
    public string? Log { get; init; }

    /// <summary>A figure against what is sold, drawn beside it; null for none.</summary>
    public SoldBand? Band { get; init; }

    /// <summary>The owner's plan and the worked one, where they differ about it; null where not.</summary>
    public string? Beside { get; init; }

    /// <summary>"at risk", "late" or "cannot" of a promise; null for none.</summary>
    public string? Standing { get; init; }
}

/// <summary>Money that stands to lose, and the days left to act. The sheet's order is money for each day left.</summary>
/// <param name="Money">In the yard's money.</param>
/// <param name="Days">Days left; one for what cannot wait.</param>
/// <param name="Basis">What the money is.</param>
public sealed record Stake(decimal Money, int Days, string Basis)
{
    /// <summary>What the order of the sheet goes by.</summary>
    public decimal PerDay => Money / Math.Max(1, Days);

    /// <summary>As shown.</summary>
    public string Words => $"{Money:#,0} at stake{(Days > 1 ? $", {Days} days left" : "")}";
}

/// <summary>Footage or volume expected, against what is sold.</summary>
/// <param name="What">What it is of.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Low">With the worst falldown on record.</param>
/// <param name="Likely">With the likely one.</param>
/// <param name="High">With the best.</param>
/// <param name="Sold">What is promised.</param>
public sealed record SoldBand(string What, string Unit, double Low, double Likely, double High, double Sold);
