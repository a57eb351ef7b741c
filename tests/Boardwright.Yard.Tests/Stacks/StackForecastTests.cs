using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.Book.State;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Stacks;

public sealed class StackForecastTests
{
    [Fact]
    public void Past_of_the_cherry_passes_by_its_corrected_readings()
    {
        var forecast = Forecast(Demonstration(), "S-07");

        Assert.Equal(3, forecast.Input.Readings.Count);
        foreach (var reading in forecast.Input.Readings)
        {
            var evening = forecast.Past.Single(day => day.Date == reading.Date.AddDays(1));
            Assert.InRange(evening.P50.Percent, reading.Mean.Percent - 1.2, reading.Mean.Percent + 1.2);
        }

        Assert.Equal(new DateOnly(2026, 5, 28), forecast.Past[0].Date);
        Assert.Equal(forecast.Past[^1], forecast.Now);
        Assert.Equal(new DateOnly(2026, 11, 3), forecast.Now.Date);
    }

    /// <summary>Ready in the past over a moisture still above the one wanted, or not ready under it, would be two answers on one page.</summary>
    [Fact]
    public void Ready_words_and_the_moisture_of_this_evening_never_contradict_each_other()
    {
        var (ready, waiting) = (0, 0);
        foreach (var state in new[] { 0, 10, 45 }.Select(days => DemonstrationBook.On(DemonstrationBook.FirstDay.AddDays(days))))
        {
            foreach (var stack in state.Stacks.Values.Where(stack => stack.Stage == StackStage.AirDrying))
            {
                var usual = Done(StackForecast.Of(state, stack.Tag));

                // Besides its own, a target a little over and under this evening's moisture, where the two are closest to contradicting each other.
                foreach (var drying in new[] { 0.1, -0.1 }.Select(points => Done(StackForecast.Of(state, stack.Tag, FormattableString.Invariant($"{usual.Now.P50.Percent + points:0.00}%")))).Prepend(usual))
                {
                    var isUnder = drying.Now.P50 <= drying.Target;
                    var words = $"{stack.Tag} on {state.Today:d MMM}: {drying.ReadyWords}, {drying.Now.P50.Percent:0.00} this evening, {drying.Target.Percent:0.00} wanted";
                    Assert.True(isUnder == drying.ReadyWords.StartsWith("since", StringComparison.Ordinal), words);
                    Assert.True(isUnder ? drying.Likely <= state.Today : drying.Likely is null || drying.Likely > state.Today, words);
                    Assert.True(drying.Early is null || drying.Likely is null || drying.Early <= drying.Likely, words);
                    Assert.True(drying.Late is null || drying.Likely <= drying.Late, words);
                    Assert.True(!isUnder || drying.Past.Where(day => day.Date > drying.Likely).All(day => day.P50 <= drying.Target), words);
                    (ready, waiting) = isUnder ? (ready + 1, waiting) : (ready, waiting + 1);
                }
            }
        }

        Assert.True(ready > 15 && waiting > 15, $"{ready} ready, {waiting} not");
    }

    [Fact]
    public void Stack_that_stands_still_about_its_target_is_not_called_ready_over_it()
    {
        var drying = Forecast(Demonstration(), "S-06");

        Assert.InRange(drying.Now.P50.Percent, 20.0, 20.5);
        Assert.False(drying.IsReady);
        Assert.True(drying.Likely is null || drying.Likely > drying.Today);
        Assert.Contains(Done(StackList.Of(Demonstration().State, show: "drying")).Rows, row => row.Stack.Tag == "S-06");
    }

    [Fact]
    public void Reading_moves_the_curve_and_the_ready_day_of_its_stack_and_of_no_other()
    {
        var book = Demonstration();
        var (before, other) = (Forecast(book, "S-23"), Forecast(book, "S-22"));

        // Drier by far than was forecast: 5/4 red oak, sections of 2 November.
        Done(book, new MoistureRead("S-23", MoistureMethod.OvenSections, MeanPct: 30.0, SdPct: 2.0, Boards: 6));
        var after = Forecast(book, "S-23");

        Assert.True(after.Now.P50.Percent < before.Now.P50.Percent - 5.0);
        Assert.True(after.Forecast.ReadyP50!.Value.AddDays(7) < before.Forecast.ReadyP50!.Value);
        Assert.NotEqual(before.ReadyWords, after.ReadyWords);
        Assert.Equal(other.Forecast, Forecast(book, "S-22").Forecast);
    }

    [Fact]
    public void Reading_taken_back_gives_the_curve_before_it()
    {
        var book = Demonstration();
        var before = Forecast(book, "S-23").ReadyWords;
        var read = Done(book, new MoistureRead("S-23", MoistureMethod.OvenSections, MeanPct: 30.0, SdPct: 2.0, Boards: 6))[0];

        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(book.Write([new NewEntry("Pell", new Withdrawn(), Corrects: read.Number, Reason: "wrong stack")]));

        Assert.Equal(before, Forecast(book, "S-23").ReadyWords);
    }

    [Fact]
    public void Ash_never_to_be_kilned_gains_from_now_on()
    {
        // S-02 at 14.6 % against outdoor equilibria of 16.5 and 16.9 %.
        var forecast = Forecast(Demonstration(), "S-02");

        Assert.NotNull(forecast.Gain);
        Assert.InRange(forecast.Gain.Value.P50.Percent, forecast.Now.P50.Percent + 0.1, 17.0);
        Assert.Equal(16.0, forecast.Target.Percent, 1e-9);
        Assert.Contains("O-307", forecast.TargetWhy, StringComparison.Ordinal);
        var sheet = Sheet(Demonstration(), "S-02");
        Assert.StartsWith("Ship", sheet.Next.Do, StringComparison.Ordinal);
        Assert.Contains("gains", sheet.Next.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(13.6, 42.0)]
    [InlineData(12.9, 28.0)]   // the frost took nothing out of the wood
    public void Cherry_is_shown_corrected_with_what_was_read_beside_it(double rawPct, double woodF)
    {
        var book = Demonstration();
        Done(book, new MoistureRead("S-07", MoistureMethod.Pin, RawPct: rawPct, SdPct: 0.8, Boards: 12, SpeciesSetting: "black cherry", WoodC: (woodF - 32.0) / 1.8));

        var sheet = Sheet(book, "S-07");

        var figure = sheet.Figures.Single(f => f.Label == "Moisture, last read");
        Assert.Equal("15.0", figure.Value);
        Assert.Contains(FormattableString.Invariant($"Read {rawPct:0.0} in wood at {woodF:0}"), figure.Basis, StringComparison.Ordinal);
        Assert.Equal(woodF < 32.0, sheet.Caution?.First == "Below freezing.");
    }

    [Fact]
    public void Wood_of_an_unknown_meter_species_keeps_a_wide_band_and_asks_for_a_section()
    {
        var book = Demonstration();
        Done(book, new SpeciesCorrected("S-13", "silver maple", "end grain"));

        var sheet = Sheet(book, "S-13");

        Assert.Equal("Species correction unknown.", sheet.Caution?.First);
        Assert.StartsWith("Cut an oven section", sheet.Next.Do, StringComparison.Ordinal);
        Assert.Contains("16.1 to 20.5, 9 times in 10", sheet.Figures[0].Basis, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_above_the_meters_range_is_kept_and_not_used()
    {
        var book = Demonstration();
        var before = Forecast(book, "S-23");
        Done(book, new MoistureRead("S-23", MoistureMethod.Pin, RawPct: 45.0, Boards: 6, SpeciesSetting: "northern red oak", WoodC: 5.0));

        var sheet = Sheet(book, "S-23");

        Assert.Equal("over 28", sheet.Figures[0].Value);
        Assert.Equal(45.0, sheet.Readings[0].Reading.Raw!.Value.Percent, 1e-9);
        Assert.Equal(before.Forecast, Forecast(book, "S-23").Forecast);
    }

    [Fact]
    public void Wood_in_a_kiln_has_no_forecast_of_the_yard() =>
        Assert.Contains("C-61", Assert.IsType<Outcome<StackForecast>.NoAnswer>(StackForecast.Of(Demonstration().State, "S-10")).Why, StringComparison.Ordinal);

    [Fact]
    public void Target_may_be_asked_for_and_nonsense_is_refused()
    {
        var state = Demonstration().State;

        Assert.Equal(25.0, ((Outcome<StackForecast>.Done)StackForecast.Of(state, "S-18", "25%")).Value.Target.Percent, 1e-9);
        Assert.Equal("target", Assert.IsType<Outcome<StackForecast>.Refused>(StackForecast.Of(state, "S-18", "dry")).Reasons[0].What);
        Assert.IsType<Outcome<StackForecast>.Refused>(StackForecast.Of(state, "S-99"));
    }

    [Fact]
    public void Stack_moved_under_a_roof_is_forecast_there_from_that_day()
    {
        var book = Demonstration();
        Done(book, new StackMoved("S-23", "shed A"));

        Assert.Equal("shed", Assert.Single(Forecast(book, "S-23").Input.Moves).Place.Name);
        Assert.Equal("row, covered", Forecast(book, "S-23").Input.Place.Name);
    }

    [Fact]
    public void Parts_of_the_cherry_add_up_to_what_lies_there()
    {
        var parts = Sheet(Demonstration(), "S-07").Parts!;

        // E-10: 816 bf expected net, 620 sold.
        Assert.Equal(620.0, parts.Sold, 1e-9);
        Assert.Equal(816.0, parts.Sold + parts.Spare, 1.0);
        Assert.Equal(905.0, parts.Sold + parts.Spare + parts.Falldown + parts.Shrunk, 1e-6);
    }

    [Fact]
    public void List_goes_by_place_and_shows_what_is_asked()
    {
        var state = Demonstration().State;

        var all = Done(StackList.Of(state));
        Assert.Equal(all.All, all.Rows.Count);
        Assert.Equal(["shed A", "shed B", "shed C", "row 1", "row 2", "row 3", "row 4", "K1", "K3"], all.Rows.Select(row => row.Stack.Place).Distinct());
        Assert.All(Done(StackList.Of(state, place: "row 2")).Rows, row => Assert.Equal("row 2", row.Stack.Place));
        Assert.All(Done(StackList.Of(state, wood: "white ash")).Rows, row => Assert.Equal("white ash", row.Stack.Species.CommonName));
        Assert.Equal(["S-08", "S-09", "S-10"], Done(StackList.Of(state, show: "kiln")).Rows.Select(row => row.Stack.Tag).Order(StringComparer.Ordinal));
        Assert.Contains(Done(StackList.Of(state, show: "ready")).Rows, row => row.Stack.Tag == "S-07");
        Assert.DoesNotContain(Done(StackList.Of(state, show: "drying")).Rows, row => row.Stack.Tag == "S-07");
        Assert.Equal("place", Assert.IsType<Outcome<StackList>.Refused>(StackList.Of(state, place: "row 9")).Reasons[0].What);
    }

    private static YardBook Demonstration() => DemonstrationBook.Open();

    private static StackForecast Forecast(YardBook book, string stack) => Done(StackForecast.Of(book.State, stack));

    private static StackSheet Sheet(YardBook book, string stack) => Done(StackSheet.Of(book.State, stack));

    private static IReadOnlyList<Entry> Done(YardBook book, Fact fact) => Done(book.Write("Pell", fact));

    private static T Done<T>(Outcome<T> outcome) => outcome is Outcome<T>.Done(var value) ? value : throw new InvalidOperationException(
        outcome is Outcome<T>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
