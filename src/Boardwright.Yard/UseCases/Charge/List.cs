using Boardwright.Drying;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A kiln and what is in it.</summary>
/// <param name="Kiln">The kiln.</param>
/// <param name="Charge">The charge running in it; null when it is empty.</param>
/// <param name="Samples">Its samples.</param>
/// <param name="Says">How it is, in a sentence.</param>
/// <param name="LoadPct">How much of its room is taken, percent of its 4/4 capacity.</param>
/// <param name="Next">The next charge planned for it by hand; null when none is.</param>
/// <param name="Worked">The next charge the season's plan loads into it; null when it loads none, and where nobody asked.</param>
/// <param name="Beside">The owner's plan and the worked one, where they differ about what is next; null where not.</param>
/// <param name="InTheWay">What stands in the way of the owner's next load; null where nothing does.</param>
public sealed record KilnView(Kiln Kiln, Charge? Charge, IReadOnlyList<SampleRow> Samples, string Says, double LoadPct, PlannedCharge? Next, SeasonCharge? Worked = null, string? Beside = null, string? InTheWay = null);

/// <summary>All kilns with their charges, and the charges that are out.</summary>
/// <param name="Kilns">By name.</param>
/// <param name="Out">The charges that are out, the last first.</param>
public sealed record ChargeList(IReadOnlyList<KilnView> Kilns, IReadOnlyList<Charge> Out)
{
    /// <summary>The kilns.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="now">The time.</param>
    /// <param name="plan">The season's plan; null where nobody asks for it.</param>
    public static ChargeList Of(YardState state, DateTime now, SeasonNow? plan = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        return new(
            [.. state.Kilns.Values.Select(kiln => Planned(state, View(state, kiln, now, plan ?? SeasonNow.NotAsked), plan ?? SeasonNow.NotAsked))],
            [.. state.Charges.Values.Where(charge => !charge.IsRunning).OrderByDescending(charge => charge.UnloadedAt)]);
    }

    private static KilnView Planned(YardState state, KilnView view, SeasonNow season) => view with
    {
        Worked = season.Sheet?.Kilns.FirstOrDefault(row => row.Kiln == view.Kiln.Name).Charges?.FirstOrDefault(charge => charge.Tag is null),
        InTheWay = view.Next is { } own ? LoadInTheWay.Of(state, own) : null,
        Beside = view.Next is { } next ? OwnLoad.Beside(state, next, season) : null,
    };

    private static KilnView View(YardState state, Kiln kiln, DateTime now, SeasonNow season)
    {
        var next = state.PlannedCharges.Values.Where(planned => planned.Kiln == kiln.Name && !state.Charges.ContainsKey(planned.Tag)).OrderBy(planned => planned.InOn).FirstOrDefault();
        if (kiln.Charge is not { } tag || !state.Charges.TryGetValue(tag, out var charge))
            return new(kiln, null, [], kiln.Down is { } down ? $"Down since {DayWords.Of(down.From.Day(), state.Today)}: {down.Why}." : "Empty.", 0.0, next);

        var room = charge.StacksInside.Sum(stack => KilnRoom.AsFourQuarter(state.Stacks[stack].Footage, state.Stacks[stack].Thickness).Count);
        return new(kiln, charge, SampleRow.Of(charge, now), Says(state, charge, now, season), 100.0 * room / kiln.Installed.CapacityBf, next);
    }

    private static string Says(YardState state, Charge charge, DateTime now, SeasonNow season)
    {
        var end = ChargeEnd.Of(state, charge, now) is { } known
            ? $"dry about {DayWords.Of(known.Dry.Day(), state.Today)}, {DayWords.Band(known.DryEarly.Day(), known.DryLate.Day(), state.Today)}; out from about {DayWords.Of(known.OutOn, state.Today)}{known.LaterWords(season, charge.Tag, state.Today)}{known.IfSetWords}"
            : charge.ExpectedOutOn is { } expected ? $"out about {DayWords.Of(expected, state.Today)}, as named when it was loaded" : "no end in sight";
        var wet = charge.Wettest is { } wettest ? $"wettest {wettest.Moisture.Percent.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture)} %, " : "";
        return $"Since {DayWords.Of(charge.LoadedAt.Day(), state.Today)}; {wet}{end}.";
    }
}
