using Boardwright.Drying;
using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>When a stack in the yard will be dry.</summary>
public static class DryAir
{
    // Two years: a thick stack is carried over two winters.
    private const int HorizonDays = 730;

    public static Command Command { get; } = Command.Of("dry", "air", "When a stack drying outdoors will be dry, as a band, day by day", Run) with
    {
        Options =
        [
            Option.Required("species", "S", "species, such as \"sugar maple\""),
            Option.Required("thickness", "L", "rough thickness, such as 4/4"),
            Option.Required("from", "MC", "mean moisture content at the start"),
            Option.Required("to", "MC", "moisture content wanted"),
            Option.Required("start", "DATE", "day the stack stands, such as 2026-05-01"),
            Option.Optional("weather", "FILE", "daily weather with the header date,t_mean_c,rh_mean_pct and perhaps wind_mean_m_s, rain_mm; hourly weather with time, t_c or t_f, rh_pct or dew_c; or an EPW file; a whole year serves any day"),
            Option.Optional("columns", "MAP", "names of an hourly file's own columns, such as time=valid,t_f=tmpf,rh_pct=relh,wind_kn=sknt"),
            Option.Optional("missing", "MARKS", "what an hourly file writes for a missing value, such as M,-999"),
            Option.Optional("past", "FILE", "weather of at least five past years in the form of --weather: the same season of each is what may come"),
            Option.Optional("place", "NAME", "weather of a place instead of a file: demonstration, or the place of the book that --data or --yard names"),
            Option.Optional("readings", "FILE", "readings on the stack with the header date,mc_pct, one row a board"),
            Option.Optional("stack", "row|shed|open-row", "covered row (default), shed, or uncovered row"),
            .. BookPlace.Options,
        ],
        Examples =
        [
            "dry air --species \"sugar maple\" --thickness 4/4 --from 68% --to 20% --start 2026-05-01 --place demonstration",
            "dry air --species \"sugar maple\" --thickness 4/4 --from 68% --to 20% --start 2026-05-01 --place demonstration --readings demo/examples/stack-readings.csv",
        ],
    };

    public sealed record Day(DateOnly Date, double McP10Pct, double McP50Pct, double McP90Pct, double EmcPct);

    public sealed record Answer(
        DateOnly? ReadyP10, DateOnly? ReadyP50, DateOnly? ReadyP90, double? DaysP50, IReadOnlyList<Day> Curve, double FastestDailyLossPct, string Origin, string Mark, IReadOnlyList<string> Notes);

    public static Outcome<Answer> Run(Ask ask)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var species = ask.Species("species");
        var thickness = ask.Length("thickness");
        var from = ask.Moisture("from");
        var to = ask.Moisture("to");
        var start = ask.Date("start");
        var stack = ask.Choice("stack", "row", "row", "shed", "open-row");
        var weather = Weather(ask, start);
        var past = ask.Has("past") ? ask.Take("--past", WeatherFiles.Read("--past", ask.File("past"), ask.TextOrNull("columns"), ask.TextOrNull("missing")).Then(years => PastSeasons.From("--past", years))) : null;
        var readings = ask.Has("readings") ? ask.Take("--readings", DryingFiles.Readings("--readings", ask.File("readings"))) ?? [] : [];
        if (!ask.Refuses && to > from && readings.Count == 0)
            ask.Refuse("to", ask.Text("to"), $"at most the moisture at the start, {from.Percent:0.##}%: wood drier than it is wanted is ready and needs no forecast");
        return ask.Refuses
            ? ask.Refused<Answer>()
            : ask.Named(AirDrying.Forecast(new AirDryingInput
            {
                Species = species!,
                Thickness = thickness,
                From = from,
                To = to,
                Start = start,
                Weather = weather!.Value.Series,
                WeatherKnownThrough = weather.Value.KnownThrough,
                PastSeasons = past,
                HorizonDays = HorizonDays,
                Readings = readings,
                Place = stack switch { "shed" => StackPlace.Shed, "open-row" => StackPlace.OpenRow, _ => StackPlace.Row },
            })).Then<Answer>(Show);
    }

    private static (WeatherSeries Series, DateOnly? KnownThrough)? Weather(Ask ask, DateOnly start)
    {
        if (ask.Has("weather") == ask.Has("place"))
        {
            ask.Refuse("weather", ask.TextOrNull("weather") ?? "nothing", "exactly one of --weather and --place");
            return null;
        }

        if (!ask.Has("place"))
            return ask.Take("--weather", WeatherFiles.Read("--weather", ask.File("weather"), ask.TextOrNull("columns"), ask.TextOrNull("missing"))) is { } series ? (series, null) : null;

        return Place(ask) is { } yard && ask.Take("--place", YardWeather.Series(yard, start, start.AddDays(HorizonDays))) is { } days ? (days, YardWeather.ObservedThrough(yard)) : null;
    }

    private static YardState? Place(Ask ask)
    {
        var name = ask.Text("place");
        if (string.Equals(name, BookPlace.DemonstrationWord, StringComparison.OrdinalIgnoreCase))
            return DemonstrationYard.State;
        var named = ask.Has("data") || ask.Has("yard");
        var yard = (named ? ask.Book() : ask.UsualBook())?.State;
        if (named && yard is null)
            return null;
        if (yard is not null && Names(yard).Any(own => own.StartsWith(name, StringComparison.OrdinalIgnoreCase)))
            return yard;

        ask.Refuse("place", name, string.Join(", ", [BookPlace.DemonstrationWord, .. yard is null ? ["or the place of the book that --data or --yard names"] : Names(yard)]));
        return null;
    }

    private static IEnumerable<string> Names(YardState yard) => yard.Yard is { } described ? [described.Place, described.Name] : [];

    private static Outcome<Answer> Show(AirDryingForecast forecast) => new Answer(
        forecast.ReadyP10, forecast.ReadyP50, forecast.ReadyP90, forecast.DaysP50,
        [.. forecast.Curve.Select(day => new Day(day.Date, day.P10.Percent, day.P50.Percent, day.P90.Percent, day.Emc.Percent))],
        forecast.FastestDailyLossPercent, forecast.Origin, forecast.Mark, forecast.Notes);
}
