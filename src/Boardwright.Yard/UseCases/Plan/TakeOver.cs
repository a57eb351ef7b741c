using System.Globalization;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>Makes the worked plan the owner's own: its loads are written into the book as planned charges, and those planned before are taken out by corrections. What runs is left alone.</summary>
public static class PlanTakeOver
{
    internal const string Reason = "the worked plan was taken over";

    /// <summary>The loads it would write, the first first; empty while there is no plan.</summary>
    public static IReadOnlyList<SeasonCharge> Loads(SeasonNow season)
    {
        ArgumentNullException.ThrowIfNull(season);
        return [.. (season.Sheet?.Kilns ?? []).SelectMany(row => row.Charges).Where(charge => charge.Tag is null).OrderBy(charge => charge.In)];
    }

    /// <summary>The owner's loads it would strike through: what is planned by hand and not in a kiln yet.</summary>
    public static IReadOnlyList<PlannedCharge> Replaced(YardState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.PlannedCharges.Values.Where(planned => !state.Charges.ContainsKey(planned.Tag)).OrderBy(planned => planned.InOn)];
    }

    /// <summary>Writes all of it or nothing.</summary>
    /// <param name="book">The book.</param>
    /// <param name="season">The season's plan as it was shown.</param>
    /// <param name="by">Who takes it over.</param>
    /// <param name="key">The form.</param>
    public static Outcome<IReadOnlyList<Entry>> Write(YardBook book, SeasonNow season, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(key);
        var (state, read) = (book.State, new Typed());
        var who = read.By(state, by);
        var loads = Loads(season);
        if (loads.Count == 0)
        {
            read.Refuse("Worked plan", season.Why ?? "no load in it", "a plan that is worked out and loads a kiln");
        }

        return read.Then(() =>
        {
            var names = new Names(state);
            List<NewEntry> entries =
            [
                .. Corrections.Standing(state.Entries).Where(one => one.Entry.Fact is ChargePlanned planned && !state.Charges.ContainsKey(planned.Charge)).Select(one => new NewEntry(who, new Withdrawn(), null, one.Place, Reason)),
                .. loads.Select(load => new NewEntry(who, new ChargePlanned(names.Next(load.Kiln), load.Kiln, load.In.Day(), load.Out.Day(), [.. load.Stacks.Select(stack => stack.Tag)], load.Serves.Count > 0 ? string.Join(", ", load.Serves) : null), Reason: Reason)),
            ];
            return book.Write([.. entries.Select((entry, index) => entry with { Id = index == 0 ? key.Id : key.Numbered(index) })]);
        });
    }

    /// <summary>Names of the next charges of each kiln, none twice.</summary>
    private sealed class Names(YardState state)
    {
        private readonly HashSet<string> used = [.. state.Charges.Keys, .. state.PlannedCharges.Keys];

        public string Next(string kiln)
        {
            var first = ChargeLoad.NextTag(state, kiln);
            var number = int.Parse(first.AsSpan(2), NumberStyles.None, CultureInfo.InvariantCulture);
            while (!used.Add(string.Create(CultureInfo.InvariantCulture, $"{first[..2]}{number}")))
            {
                number++;
            }

            return string.Create(CultureInfo.InvariantCulture, $"{first[..2]}{number}");
        }
    }
}
