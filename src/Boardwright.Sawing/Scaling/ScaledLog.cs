using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>A log under one rule: gross, every deduction, net, solid volume, and what had to be assumed.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="GrossUnrounded">Board feet of the formula; null under a cubic rule.</param>
/// <param name="Gross">Board feet as the rule rounds them; null under a cubic rule.</param>
/// <param name="Deductions">Each deduction with its method; disputes are about these.</param>
/// <param name="Net">Gross less deductions, to the board foot; null under a cubic rule.</param>
/// <param name="Volume">Solid volume inside bark, gross: by the rule itself under a cubic rule, by Smalian otherwise.</param>
/// <param name="Assumed">What was not measured and had to be assumed, in words; null when nothing was.</param>
/// <param name="Note">What a reader of the figure must know; null when there is nothing.</param>
public sealed record ScaledLog(
    LogRule Rule, double? GrossUnrounded, BoardFeet? Gross, IReadOnlyList<LogDeduction> Deductions, BoardFeet? Net, Volume Volume, string? Assumed, string? Note)
{
    /// <summary>Sum of the deductions, unrounded, never more than the gross.</summary>
    public double DeductionBoardFeet => Math.Min(Gross?.Count ?? 0.0, Deductions.Sum(one => one.BoardFeet));
}

/// <summary>One deduction from the gross scale.</summary>
/// <param name="Method">Name of the method and what went in, in words.</param>
/// <param name="BoardFeet">Board feet taken off, unrounded.</param>
public sealed record LogDeduction(string Method, double BoardFeet);
