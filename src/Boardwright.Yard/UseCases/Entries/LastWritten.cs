using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.UseCases;

/// <summary>What somebody wrote last about an item, to be taken back for hours: one entry, or the round written with it.</summary>
/// <param name="Numbers">The entries.</param>
/// <param name="By">Who wrote them.</param>
/// <param name="Words">In a sentence.</param>
public sealed record LastWritten(IReadOnlyList<long> Numbers, string By, string Words)
{
    private const int HoursMost = 12;

    /// <summary>The last entry of an item's history that a person of the yard wrote within twelve hours; null when there is none.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="history">Numbers of the entries that tell of it, in order.</param>
    /// <param name="now">Now.</param>
    public static LastWritten? Of(YardState state, IReadOnlyList<long> history, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(history);
        var entries = history.Select(state.Entry).Where(entry => IsOfTheYard(entry.Fact)).ToList();
        if (entries.MaxBy(entry => entry.Number) is not { } last || !state.People.ContainsKey(last.By) || last.HappenedAt < now.AddHours(-HoursMost) || last.HappenedAt > now.AddHours(HoursMost))
            return null;

        var round = entries.Where(entry => entry.By == last.By && entry.HappenedAt == last.HappenedAt && entry.WrittenAtUtc == last.WrittenAtUtc).DistinctBy(entry => entry.Number).ToList();
        var more = round.Count > 1 ? $" And {round.Count - 1} more." : "";
        return new([.. round.Select(entry => entry.Number)], last.By, $"{last.By}, {last.HappenedAt:HH:mm}: {EntryWords.Of(round[0].Fact)}{more}");
    }

    // Tallies and shipments are taken back where they are made.
    private static bool IsOfTheYard(Fact fact) => fact is MoistureRead or SectionsWeighed or StackBuilt or StackMoved or StackCounted or StackReserved or LogSawn
        or ChargeLoaded or ChargeUnloaded or SampleCut or SampleWeighed or SampleDamaged or SettingsChanged or GaugeRead or Interrupted or RestartStepDone or StressTested or HeatTreated or ScheduleChosen;

    /// <summary>Takes them back: a correction for each, all or none.</summary>
    public Outcome<IReadOnlyList<Entry>> TakeBack(YardBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.Write([.. Numbers.Reverse().Select(number => new NewEntry(By, new Withdrawn(), null, number, "taken back"))]);
    }
}
