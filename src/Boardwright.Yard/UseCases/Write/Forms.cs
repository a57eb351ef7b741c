using Boardwright.Yard.Book;
using Boardwright.Yard.Book.State;

namespace Boardwright.Yard.UseCases;

/// <summary>A form of the yard for one thing.</summary>
/// <param name="Tag">What it is about; empty for a form about nothing in particular.</param>
/// <param name="Words">What that is, and when it was last written.</param>
/// <param name="Path">Where it is.</param>
public sealed record FormLink(string Tag, string Words, string Path);

/// <summary>A kind of entry, and what it can be written about now.</summary>
/// <param name="Do">Begins with a verb.</param>
/// <param name="For">Who writes it most.</param>
/// <param name="Links">One for each thing it can be about.</param>
public sealed record YardForm(string Do, Duties For, IReadOnlyList<FormLink> Links)
{
    /// <summary>Every form of the yard, with what can be written now.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="plan">The season's plan; null where nobody asks for it.</param>
    public static IReadOnlyList<YardForm> All(YardState state, SeasonNow? plan = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        var season = plan ?? SeasonNow.NotAsked;
        var pours = state.Pours.Values.Where(pour => pour.DemouldedAt is null).ToList();
        var running = state.Charges.Values.Where(charge => charge.IsRunning).ToList();
        return
        [
            new("Weigh the samples of a charge", Duties.Kilns, [.. running.Where(charge => charge.SoundSamples.Any()).Select(charge => Of(charge, "weigh", $"last weighed {charge.SoundSamples.Max(sample => sample.Weighings[^1].At):d MMM HH:mm}"))]),
            new("Read the air or the gauges of a charge", Duties.Kilns, [.. running.Select(charge => Of(charge, "air", charge.Gauges.Count > 0 ? $"last read {charge.Gauges[^1].At:d MMM HH:mm}" : "not read yet"))]),
            new("Set a kiln", Duties.Kilns, [.. running.Where(charge => charge.Settings.Count > 0 || charge.Samples.Count > 0).Select(charge => Of(charge, "set", charge.Settings.Count > 0 ? $"set {charge.Settings[^1].At:d MMM HH:mm}" : "not set yet"))]),
            new("Load a charge", Duties.Kilns, state.Kilns.Count == 0 ? [] : [.. state.PlannedCharges.Values.Where(planned => !state.Charges.ContainsKey(planned.Tag)).OrderBy(planned => planned.InOn).Take(3).Select(planned => new FormLink(planned.Tag, OwnLoad.Beside(state, planned, season)?.TrimEnd('.') ?? $"{planned.Kiln}, planned for {DayWords.Of(planned.InOn, state.Today)}", $"/charges/new?plan={Uri.EscapeDataString(planned.Tag)}")), new FormLink("", "one that was not planned", "/charges/new")]),
            new("Unload a charge", Duties.Kilns, [.. running.Select(charge => Of(charge, "unload", ChargeEnd.OutDay(state, charge) is { } day ? $"out from about {DayWords.Of(day, state.Today)}" : "no day known"))]),
            new("Write a log in", Duties.Mill | Duties.Kilns, state.Yard is null ? [] : [new("", "measured, scanned, numbered", "/logs/new")]),
            new("Write what a log gave", Duties.Mill, [.. LogTurns.Of(state).Where(one => one.Log.Proven).Select(one => new FormLink(one.Log.Tag, $"{one.Log.Species.CommonName}, {one.Log.ScalingDiameter.Inches:0.#} in; boards by size, or a quick tally", $"/logs/{one.Log.Tag}/sawn"))]),
            new("Build a stack", Duties.Kilns | Duties.Mill, state.Places.Count == 0 ? [] : [new("", "boards on stickers, and their card", "/stacks/new")]),
            new("Move a stack", Duties.Kilns, [.. state.Stacks.Values.Where(stack => stack is { IsHere: true, Stage: not StackStage.InKiln }).Select(stack => new FormLink(stack.Tag, $"{(stack.Proven ? stack.Species.CommonName : "unproven")} {stack.Thickness}, at {stack.Place}", $"/stacks/{stack.Tag}/move"))]),
            new("Read the moisture of a stack", Duties.Kilns, [.. state.Stacks.Values.Where(stack => stack is { IsHere: true, Stage: not StackStage.InKiln }).OrderBy(stack => stack.Moisture?.At ?? DateTime.MinValue)
                .Select(stack => new FormLink(stack.Tag, $"{(stack.Proven ? stack.Species.CommonName : "unproven")} {stack.Thickness}, {stack.Place}; {(stack.Moisture is { } read ? $"last read {DayWords.Of(read.At, state.Today)}" : "never read")}", $"/stacks/{stack.Tag}/read"))]),
            new("Tally a pack", Duties.Hands | Duties.Mill, [new("", "a new pack", "/tally/new"), .. state.Packs.Values.Where(pack => pack.IsHere)
                .Select(pack => new FormLink(pack.Tag, $"count it again; {pack.Species.CommonName} {pack.Thickness}, {pack.Tallies.Count} {(pack.Tallies.Count == 1 ? "tally" : "tallies")}", $"/tally/{pack.Tag}/count"))]),
            new("Take an order", Duties.Office, [new("", "a customer asks for something by a day", "/promises/new")]),
            new("Write a load that leaves", Duties.Hands | Duties.Office, [.. state.Orders.Values.Where(order => order.IsOpen).OrderBy(order => order.DueOn)
                .Select(order => new FormLink(order.Tag, $"{order.Customer}, {order.Lines[0].Asked.Goods}, due {DayWords.Of(order.DueOn, state.Today)}", $"/promises/{order.Tag}/ship"))]),
            new("Weigh a mix of resin", Duties.Casting, [.. pours.Where(pour => !pour.IsFull).Select(pour => Of(state, pour, "mix"))]),
            new("Write a pour", Duties.Casting, [.. pours.Where(pour => PourBucket.Of(state, pour, state.Today.ToDateTime(default)).Liquid.Count > 0).Select(pour => Of(state, pour, "poured"))]),
            new("Take a table out of its mould", Duties.Casting, [.. pours.Where(pour => pour.PouredAt is not null).Select(pour => Of(state, pour, "demould"))]),
            new("Take another day for a pour", Duties.Casting | Duties.Office, [.. pours.Where(pour => pour.PouredAt is null).Select(pour => Of(state, pour, "move"))]),
            new("Read the shop’s temperature", Duties.Casting, state.Resins.Count == 0 ? [] : [new("", $"{(state.ShopC.Count > 0 ? $"last read {state.ShopC.Keys.Last():d MMM HH:mm}" : "never read")}", "/pours/shop")]),
            new("Count resin", Duties.Casting, state.Resins.Count == 0 ? [] : [new("", string.Join(", ", state.Resins.Keys), "/pours/resin")]),
            new("Write something else", Duties.All, [new("", "equipment, tags, species, counts, interruptions, answers to customers, remarks", "/write/entry")]),
            new("Change a price, a figure, a kiln, a person", Duties.Office, [new("", "how the yard is set up", "/house")]),
            new("Correct an entry", Duties.All, [new("", "open the book at the entry; the old one stays, struck through", "/book")]),
        ];
    }

    private static FormLink Of(Charge charge, string act, string words) => new(charge.Tag, $"{charge.Kiln}, {string.Join(", ", charge.Stacks)}; {words}", $"/charges/{charge.Tag}/{act}");

    private static FormLink Of(YardState state, Pour pour, string act) => new(pour.Tag, $"{string.Join(", ", pour.Plan.Pieces.Select(piece => piece.Species).Distinct())}, {(pour.PouredAt is { } at ? $"poured {DayWords.Of(at, state.Today)}" : $"pours {DayWords.Of(pour.PourOn, state.Today)}")}", $"/pours/{pour.Tag}/{act}");
}

/// <summary>The write page of a person: what they most likely write now, then every form there is.</summary>
/// <param name="Likely">From what is due today, in the sheet's order, then by their role; each once.</param>
/// <param name="All">Forms that can be written about something now.</param>
/// <param name="Empty">Forms with nothing to write about yet.</param>
public sealed record WriteList(IReadOnlyList<(string Do, FormLink Link)> Likely, IReadOnlyList<YardForm> All, IReadOnlyList<string> Empty)
{
    private const int LikelyMost = 5;
    private const string EntryPrefix = "/write/entry/";

    /// <summary>The list for a person; null for everybody.</summary>
    /// <param name="state">The yard.</param>
    /// <param name="person">A name of the book; null for everybody.</param>
    /// <param name="plan">The season's plan; null where nobody asks for it.</param>
    public static WriteList For(YardState state, string? person, SeasonNow? plan = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        var forms = YardForm.All(state, plan);
        var byPath = forms.SelectMany(form => form.Links.Select(link => (form.Do, Link: link))).ToDictionary(pair => pair.Link.Path, StringComparer.Ordinal);
        var due = MorningSheet.For(state, person, plan).Tasks.Where(task => byPath.ContainsKey(task.Path) || task.Path.StartsWith(EntryPrefix, StringComparison.Ordinal))
            .Select(task => (task.Do, byPath.TryGetValue(task.Path, out var known) ? known.Link : new FormLink("", task.Why, task.Path)));
        var duties = person is not null && state.People.TryGetValue(person, out var named) ? Roles.Of(named) : Duties.All;
        var usual = forms.Where(form => form.For != Duties.All && (form.For & duties) != 0 && form.Links.Count > 0).Select(form => (form.Do, form.Links[0]));
        return new([.. due.Concat(usual).DistinctBy(pair => pair.Item2.Path).Take(LikelyMost)], [.. forms.Where(form => form.Links.Count > 0)], [.. forms.Where(form => form.Links.Count == 0).Select(form => form.Do)]);
    }
}
