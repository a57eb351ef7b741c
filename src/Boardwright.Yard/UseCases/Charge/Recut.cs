using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A sample board that was retired and in whose place none was cut yet.</summary>
/// <param name="Retired">The sample.</param>
/// <param name="Name">Number of the one to cut.</param>
/// <param name="Stack">Stack to cut it from; null where the retired one names none.</param>
public sealed record SampleRecut(Sample Retired, string Name, string? Stack)
{
    /// <summary>How a sample is cut: where in the board, and what of it is weighed.</summary>
    /// <source id="wengert-drying-oak" locator="step 3B, cutting samples"/>
    public const string How = "A piece 30 in long, 12 to 20 in from the end of the board, free of knots and bark; a 1 in section off each end, the 28 in between is the sample, its ends coated.";

    /// <summary>From which wood.</summary>
    public string Where => $"Cut sample {Name} from {(Stack is { } tag ? $"a board of {tag}" : "a board")} as wet and as slow as {Retired.Name} was, out of its courses beside the old place.";

    /// <summary>Samples of a running charge to cut anew, the longest retired first; as many of a stack as were retired and not yet followed by another of it.</summary>
    public static IReadOnlyList<SampleRecut> Of(Charge charge)
    {
        ArgumentNullException.ThrowIfNull(charge);
        if (!charge.IsRunning)
            return [];
        var due = charge.Samples.Where(sample => sample.Retired).GroupBy(sample => sample.Stack).SelectMany(retired =>
        {
            var first = retired.Min(sample => sample.RetiredAt);
            return retired.OrderBy(sample => sample.RetiredAt).Skip(charge.Samples.Count(other => other.Stack == retired.Key && other.Weighings[0].At >= first));
        });
        return [.. due.Select(sample => new SampleRecut(sample, ChargeSample.NextName(charge), sample.Stack ?? (charge.StacksInside.ToList() is [var only] ? only : null)))];
    }
}
