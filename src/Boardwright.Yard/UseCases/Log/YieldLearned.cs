using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>What logs of a yard give over their scale: before any was sawn, and as those that were have taught, by wood and sawyer.</summary>
/// <param name="PriorRatio">Green tally over International scale taken for true before the first log.</param>
/// <param name="Logs">Logs that teach.</param>
/// <param name="Sawn">Logs sawn and scaled.</param>
/// <param name="LogSd">Standard deviation of one log's ratio from the next, wood and sawyer the same.</param>
/// <param name="Learned">What the next log is taken to give, by wood and sawyer.</param>
/// <method page="docs/methods/sawn-yield.md"/>
public sealed record YieldLearned(double PriorRatio, int Logs, int Sawn, double LogSd, IReadOnlyList<YieldLearned.Row> Learned)
{
    public static Command Command { get; } = Command.Of("log", "yield", "What logs give over their scale, learned from those sawn here, by wood and sawyer", Run) with
    {
        Options = BookPlace.Options,
        Examples = ["log yield --yard demonstration"],
    };

    /// <summary>What the next log of a wood is taken to give in a sawyer's hands.</summary>
    /// <param name="Species">The wood.</param>
    /// <param name="Sawyer">Who saws.</param>
    /// <param name="Logs">Logs of this wood by this sawyer.</param>
    /// <param name="MeanRatio">Their plain mean; null where none counts.</param>
    /// <param name="NextRatio">Expected of the next.</param>
    /// <param name="LowRatio">One in ten gives less.</param>
    /// <param name="HighRatio">One in ten gives more.</param>
    public sealed record Row(string Species, string Sawyer, int Logs, double? MeanRatio, double NextRatio, double LowRatio, double HighRatio);

    public static Outcome<YieldLearned> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        return ask.Book()?.State is { } state ? Of(state) : ask.Refused<YieldLearned>();
    }

    /// <summary>What a yard has learned.</summary>
    public static YieldLearned Of(YardState state)
    {
        var learned = LogYield.Of(state);
        return new(LogYield.Prior(state).Ratio, learned.Count, LogYield.Sawn(state).Count(), learned.LogSd,
            [.. learned.Groups.Select(group => (group.Species, group.Sawyer, Next: learned.Next(group.Species, group.Sawyer))).Select(one => new Row(one.Species, one.Sawyer, one.Next.Logs, one.Next.OwnRatio, one.Next.Ratio, one.Next.Low, one.Next.High))]);
    }
}
