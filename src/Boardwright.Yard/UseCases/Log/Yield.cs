using System.Runtime.CompilerServices;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>What logs of this yard give over their scale, learned from those that were sawn: by wood and sawyer.</summary>
public static class LogYield
{
    private const double UsualTallyPerScale = 1.06;
    private static readonly ConditionalWeakTable<YardState, SawnYield> Learned = [];

    /// <summary>What is taken for true before the first log: the house's own record, a setting.</summary>
    public static YieldPrior Prior(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return new(state.Setting("lumber_tally_per_international") is { } own and > 0.3 and < 3.0 ? own : UsualTallyPerScale);
    }

    /// <summary>Logs sawn, with their ratio, and whether a later reset leaves them out.</summary>
    public static IEnumerable<(Log Log, SawnRatio Ratio, bool Counts)> Sawn(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        foreach (var log in state.Logs.Values.Where(log => log is { IsSawn: true, Proven: true }))
        {
            if (RatioOf(log) is not { } ratio)
                continue;
            var one = new SawnRatio(log.Species.CommonName, log.SawnBy ?? "", ratio);
            yield return (log, one, one.Teaches && !state.YieldsBegun.Any(begun => log.SawnAt < begun.At && (begun.Fact.Species is null || begun.Fact.Species == log.Species.CommonName) && (begun.Fact.Sawyer is null || begun.Fact.Sawyer == log.SawnBy)));
        }
    }

    /// <summary>Green tally over International scale, not rounded; null for a log without scale or footage.</summary>
    public static double? RatioOf(Log log)
    {
        ArgumentNullException.ThrowIfNull(log);
        return log.SawnBf > 0.0 && YardLog.Scale(log) is Outcome<ScaledLog>.Done({ GrossUnrounded: { } scale and > 0.0 }) ? log.SawnBf / scale : null;
    }

    /// <summary>The model.</summary>
    public static SawnYield Of(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Learned.GetValue(state, one => SawnYield.Of(Prior(one), Sawn(one).Where(sawn => sawn.Counts).Select(sawn => sawn.Ratio)));
    }

    /// <summary>Who most likely saws the next log: who sawed last; null where nobody did.</summary>
    public static string? Sawyer(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Logs.Values.Where(log => log.IsSawn).OrderBy(log => log.SawnAt).ThenBy(log => log.Tag, StringComparer.Ordinal).LastOrDefault()?.SawnBy;
    }

    /// <summary>Of the next log of a wood.</summary>
    public static YieldEstimate Next(YardState state, string species) => Of(state).Next(species, Sawyer(state));

    /// <summary>Dry board feet sold per board foot of International scale: the house's chain of factors, its first link, tally over scale, replaced by what was learned.</summary>
    /// <returns>Expected, and what one log in ten stays below and passes.</returns>
    public static (double Likely, double Low, double High) SoldPerScale(YardState state, string species)
    {
        var (next, chain) = (Next(state, species), (state.Setting("dry_sold_per_international") ?? 1.0) / Prior(state).Ratio);
        return (next.Ratio * chain, next.Low * chain, next.High * chain);
    }

    /// <summary>Begins anew: logs sawn before now teach no more.</summary>
    /// <param name="book">The book.</param>
    /// <param name="species">Only this wood; empty for all.</param>
    /// <param name="sawyer">Only this sawyer; empty for all.</param>
    /// <param name="why">The reason, such as a new blade or a new setworks.</param>
    /// <param name="by">Who writes it.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Reset(YardBook book, string? species, string? sawyer, string? why, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        var reason = read.Named("Why", why, "what changed, such as a new mill or blades of another kerf");
        var sawyers = Sawn(state).Select(sawn => sawn.Ratio.Sawyer).Distinct().Order(StringComparer.Ordinal).ToList();
        if (!string.IsNullOrWhiteSpace(sawyer) && !sawyers.Contains(sawyer))
            read.Refuse("Sawyer", sawyer, sawyers.Count == 0 ? "nobody: no log was sawn yet" : string.Join(", ", sawyers));
        var who = read.By(state, by);
        return read.Then(() => key.Write(book, who, new YieldReset(reason, Blank(species), Blank(sawyer))));
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
