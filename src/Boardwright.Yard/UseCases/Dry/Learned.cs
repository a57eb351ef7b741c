using System.Globalization;
using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Wood;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>Whose rates: of stacks in the yard or of charges in kilns.</summary>
public enum RateKind
{
    Stacks,
    Charges,
}

/// <summary>A stack or charge whose readings show a rate.</summary>
/// <param name="Tag">Its tag.</param>
/// <param name="Species">The wood.</param>
/// <param name="Place">Row, shed or kiln.</param>
/// <param name="On">Day it was sawn or loaded.</param>
/// <param name="Readings">Readings or weighings behind it.</param>
/// <param name="Factor">Its rate over the printed one of its wood.</param>
/// <param name="Low">Nine in ten are over this, by its readings.</param>
/// <param name="High">Nine in ten are under this.</param>
/// <param name="Teaches">Its readings narrowed the rate.</param>
/// <param name="Counts">The day asked for does not leave it out.</param>
public sealed record RateTeacher(string Tag, string Species, string Place, DateOnly On, int Readings, double Factor, double Low, double High, bool Teaches, bool Counts);

/// <summary>What the next stack or charge of a wood in a place is begun with.</summary>
/// <param name="Species">The wood.</param>
/// <param name="Place">Row, shed or kiln.</param>
/// <param name="Factor">Its rate over the printed one.</param>
/// <param name="Low">Nine in ten are over this.</param>
/// <param name="High">Nine in ten are under this.</param>
/// <param name="Teachers">Stacks or charges of this wood in this place that teach it.</param>
/// <param name="Readings">Their readings.</param>
public sealed record RateBegun(string Species, string Place, double Factor, double Low, double High, int Teachers, int Readings);

/// <summary>What readings have taught of how fast wood dries here, how many stand behind it, and how it is forgotten.</summary>
/// <param name="Kind">Of stacks or charges.</param>
/// <param name="Used">The next one begins with it; false where the house has it begin with the printed rate.</param>
/// <param name="Since">First day that counts; null where every day does.</param>
/// <param name="Known">Woods and places of the yard: each may be begun anew alone.</param>
/// <param name="Apart">Woods and places with a day of their own: the first that counts, null to begin with the printed rate.</param>
/// <param name="Shown">Every stack or charge that shows a rate, the newest first.</param>
/// <param name="Next">What the next one is begun with, or would be where nothing is begun with what was learned.</param>
public sealed record DryLearned(RateKind Kind, bool Used, DateOnly? Since, IReadOnlyList<string> Known, IReadOnlyList<(string Of, DateOnly? Since)> Apart, IReadOnlyList<RateTeacher> Shown, IReadOnlyList<RateBegun> Next)
{
    private const double TenthOfNormal = 1.2816;

    public static Command Command { get; } = Command.Of("dry", "learned", "What readings have taught of the rates of stacks and kilns, and how many stand behind it", Run) with
    {
        Options = BookPlace.Options,
        Examples = ["dry learned --yard demonstration"],
    };

    public sealed record Answer(IReadOnlyList<DryLearned> Learned);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        return ask.Book()?.State is { } state ? new Answer([Of(state, RateKind.Stacks), Of(state, RateKind.Charges)]) : ask.Refused<Answer>();
    }

    /// <summary>What was learned of one kind.</summary>
    public static DryLearned Of(YardState state, RateKind kind)
    {
        ArgumentNullException.ThrowIfNull(state);
        var since = LearnedRates.Since(state, Setting(kind));
        var shown = kind == RateKind.Stacks
            ? LearnedRates.Shown(state).Select(one => (Teacher: Teacher(state, kind, one.Rate, one.Stack.SawnOn, one.Readings, DryingCoefficients.For(one.Stack.Species).AirSpread), one.Rate, Usual: DryingCoefficients.For(one.Stack.Species).AirSpread, Vacuum: false)).ToList()
            : LearnedKilnRates.Shown(state).Select(one => (Teacher: Teacher(state, kind, one.Rate, one.Charge.LoadedAt.Day(), one.Readings, one.Usual), one.Rate, one.Usual, Vacuum: LearnedKilnRates.Vacuum(state, one.Charge))).ToList();
        var known = Names(state, kind);
        var teaching = shown.Where(one => one.Teacher is { Counts: true, Teaches: true }).ToList();
        return new(
            kind,
            since is not null,
            since == DateOnly.MinValue ? null : since,
            known,
            [.. known.Where(of => state.Setting(LearnedRates.SettingOf(Setting(kind), of)) is not null).Select(of => (of, LearnedRates.Since(state, LearnedRates.SettingOf(Setting(kind), of))))],
            [.. shown.Select(one => one.Teacher).OrderByDescending(one => one.On).ThenBy(one => one.Tag, StringComparer.Ordinal)],
            [.. teaching.GroupBy(one => (one.Teacher.Species, one.Teacher.Place)).OrderBy(group => group.Key.Species, StringComparer.Ordinal).ThenBy(group => group.Key.Place, StringComparer.Ordinal)
                .Select(group => Begun(group.Key, [.. group.Select(one => one.Teacher)], NextRate(kind, group.Key, group.First().Usual, group.First().Vacuum, [.. teaching.Where(one => one.Vacuum == group.First().Vacuum).Select(one => one.Rate)])))]);
    }

    /// <summary>Decides from which day on stacks or charges teach: all of them, or those of one wood, row or kiln.</summary>
    /// <param name="book">The book.</param>
    /// <param name="kind">Of stacks or charges.</param>
    /// <param name="of">A wood, a row or a kiln; empty for all.</param>
    /// <param name="since">First day that counts, 2026-11-02; empty to begin every one with the printed rate again.</param>
    /// <param name="by">Who writes it.</param>
    /// <param name="key">Of the form.</param>
    public static Outcome<IReadOnlyList<Entry>> Begin(YardBook book, RateKind kind, string? of, string? since, string? by, PostedKey key)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(key);
        var read = new Typed();
        var day = DateOnly.MinValue;
        if (!string.IsNullOrWhiteSpace(since) && !DateOnly.TryParseExact(since.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
            read.Refuse("From", since, "a day such as 2026-04-01, or nothing to begin with the printed rates");
        if (!string.IsNullOrWhiteSpace(of) && Of(book.State, kind).Known is var known && !known.Contains(of.Trim(), StringComparer.OrdinalIgnoreCase))
            read.Refuse("Of", of, $"all, or {(known.Count == 0 ? "a wood or place of the book: it has none" : $"one of {string.Join(", ", known)}")}");
        var who = read.By(book.State, by);
        var value = string.IsNullOrWhiteSpace(since) ? 0.0 : double.Parse(day.ToString("yyyyMMdd", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return read.Then(() => key.Write(book, who, new SettingSet(LearnedRates.SettingOf(Setting(kind), of), value, "day")));
    }

    private static string Setting(RateKind kind) => kind == RateKind.Stacks ? LearnedRates.Setting : LearnedKilnRates.Setting;

    // Woods in the yard, then rows and sheds or kilns.
    private static IReadOnlyList<string> Names(YardState state, RateKind kind)
    {
        var stacks = state.Stacks.Values.Where(stack => stack is { FromStack: null, Proven: true }).ToList();
        var places = kind == RateKind.Stacks ? stacks.Select(stack => LearnedRates.FirstPlace(state, stack)) : state.Kilns.Keys;
        return [.. stacks.Select(stack => stack.Species.CommonName).Distinct().Order(StringComparer.Ordinal), .. places.Distinct().Order(StringComparer.Ordinal)];
    }

    private static Species SpeciesOf(string name) => SpeciesTable.All.First(species => species.CommonName == name);

    private static RateTeacher Teacher(YardState state, RateKind kind, RateFound rate, DateOnly on, int readings, double usual)
    {
        var (low, high) = Band(rate.Found);
        return new(rate.Tag, rate.Species, rate.Place, on, readings, rate.Found.Factor, low, high, RateHistory.Teaches(usual, rate.Found), LearnedRates.Teaches(state, Setting(kind), rate.Species, rate.Place, on));
    }

    private static DryingRate NextRate(RateKind kind, (string Species, string Place) group, double usual, bool vacuum, IReadOnlyList<RateFound> teaching)
    {
        var species = SpeciesOf(group.Species);
        return kind == RateKind.Stacks ? RateHistory.InYard(species, group.Place, teaching)
            : vacuum ? RateHistory.InVacuum(usual, species, group.Place, teaching) : RateHistory.InKiln(species, group.Place, teaching);
    }

    private static RateBegun Begun((string Species, string Place) group, IReadOnlyList<RateTeacher> teachers, DryingRate rate)
    {
        var (low, high) = Band(rate);
        return new(group.Species, group.Place, rate.Factor, low, high, teachers.Count, teachers.Sum(one => one.Readings));
    }

    private static (double Low, double High) Band(DryingRate rate) => (rate.Factor * Math.Exp(-TenthOfNormal * rate.Spread), rate.Factor * Math.Exp(TenthOfNormal * rate.Spread));
}
