using System.Globalization;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables;

/// <summary>The yard itself, its surroundings and its figures.</summary>
internal static class SetupTables
{
    public static IReadOnlyList<YardTable> All { get; } =
    [
        YardTable.Of("yard", "name,place", r => new YardDescribed(
            r.Text("name"), r.Text("place"), r.Number("altitude_m"), r.Number("latitude_deg"), r.Mm("throat"), r.M("log_len_max"), r.Mm("kerf"), r.Mm("planer_width"))),
        YardTable.Of("places", "place,type", r => new PlaceNamed(r.Text("place"), r.Word<PlaceKind>("type"), r.Yes("signal"))),
        YardTable.Of("people", "person,role", r => new PersonNamed(r.Text("person"), r.Text("role"), r.Money("paid_per_hour_money"), r.Yes("loads_kilns"), r.Yes("leads_loading"))),
        YardTable.Of("work-days", "day,from,to,hours,people", r => new WorkDaySet(
            r.Word<DayOfWeek>("day"), r.TimeOrNull("from") ?? r.Refuse("from", "nothing", "a time as 07:30", default(TimeOnly)), r.TimeOrNull("to") ?? r.Refuse("to", "nothing", "a time as 16:00", default(TimeOnly)),
            r.Number("hours"), r.List("people"))),
        YardTable.Of("closed-days", "day,why", r => new DayClosed(r.Date("day"), r.Text("why"), r.TimeOrNull("from"))),
        YardTable.Of("people-away", "person,day,why", r => new PersonAway(r.Text("person"), r.Date("day"), r.Text("why"))),
        YardTable.Of("settings", "name,value", r => new SettingSet(r.Text("name"), r.Number("value"), r.TextOrNull("unit") ?? "")),
        YardTable.Of("prices", "species", r => new SpeciesPriced(
            r.Species("species"), r.Money("dry_fas_money"), r.Money("dry_1c_money"), r.Money("dry_2a_money"), r.Money("green_fas_money"), r.Money("green_1c_money"), r.Money("green_2a_money"),
            BandOf(r, "falldown_boards_pct") ?? new(0.0, 0.0, 0.0), BandOf(r, "falldown_slabs_pct"))),
        YardTable.Of("damage-days", "stain_group", r => new DamageDaysSet(r.Text("stain_group"), Days(r, "below_4c_days"), Days(r, "from_4_to_15c_days"), Days(r, "above_15c_days"))),
        YardTable.Of("normals", "month,mean_c,mean_rh_pct", r => new ClimateNormalSet(r.Whole("month"), r.Number("mean_c"), r.Number("mean_rh_pct"))),
        YardTable.Of("weather", "date,t_mean_c,rh_mean_pct", r => new WeatherObserved(
            r.Date("date"), r.Number("t_mean_c"), r.Number("rh_mean_pct"), r.NumberOrNull("wind_mean_m_s"), r.NumberOrNull("t_min_c"), r.NumberOrNull("t_max_c")), r => r.At("date", 23)),
        YardTable.Of("forecast", "date,t_mean_c,rh_mean_pct", r => new WeatherForecast(
            r.Date("date"), r.Number("t_mean_c"), r.Number("rh_mean_pct"), r.NumberOrNull("wind_mean_m_s"), r.NumberOrNull("t_min_c"), r.NumberOrNull("t_max_c"))),
        YardTable.Of("kilns", "kiln,type,capacity_44_bf", r => new KilnInstalled(
            r.Text("kiln"), r.Word<KilnType>("type"), r.Number("capacity_44_bf"), r.M("max_piece"), r.C("max_dry_bulb"), r.Number("heat_kw"), r.COrNull("heat_at_water"),
            r.Whole("stack_places"), r.Mm("place_width"), r.M("place_length"), r.Mm("place_height"), r.Number("fill_of_layers"), r.Number("load_h"), r.Number("unload_h"), r.Number("fans_kw"),
            r.Money("fixed_per_day_money"), [.. r.List("holding_heat_kw").Select(pair => Holding(r, pair))], r.TextOrNull("note"), r.NumberOrNull("load_max_kg"))),
        YardTable.Of("boilers", "boiler,steady_output_kw", r => new BoilerInstalled(r.Text("boiler"), r.Number("steady_output_kw"), r.NumberOrNull("stoked_every_h"))),
        YardTable.Of("sensors", "topic,kiln,quantity,unit", r => new SensorPlaced(
            r.Text("topic"), r.Text("kiln"), r.Word<SensorQuantity>("quantity"), r.Text("unit"), r.NumberOrNull("silent_after_min") ?? 15.0)),
        YardTable.Of("fuel", "counted_on,cords", r => new FuelCounted(r.Number("cords"), r.Number("solid_share"), r.Species("species"), r.Number("mc_pct")), r => r.At("counted_on")),
        YardTable.Of("calls", "at,caller,text", r => new PhoneCallTaken(r.Text("caller"), r.Text("text"), r.TextOrNull("about"), r.TextOrNull("species") is { } species
            ? new TreeOffered(species, r.MmOrNull("girth"), r.MOrNull("first_limb"), r.NumberOrNull("road_miles"), r.MOrNull("log_len"), r.MmOrNull("small_end_low"), r.MmOrNull("small_end_high"), r.Yes("metal_nearby"), r.TextOrNull("felled_by"))
            : null), r => r.At("at")),
    ];

    // low/likely/high
    private static Band? BandOf(TableRow row, string column)
    {
        if (row.TextOrNull(column) is not { } text)
            return null;
        var parts = text.Split('/');
        double[] values = [.. parts.Select(part => double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : double.NaN)];
        return values.Length == 3 && values[0] <= values[1] && values[1] <= values[2] ? new(values[0], values[1], values[2]) : row.Refuse<Band?>(column, text, "low/likely/high in percent, such as 3/5/9", null);
    }

    // stain / borers / end checks, a dash where none is expected
    private static DamageDays Days(TableRow row, string column)
    {
        var parts = row.Text(column).Split('/', StringSplitOptions.TrimEntries);
        int?[] days = [.. parts.Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : (int?)null)];
        return days.Length == 3 && parts.Zip(days).All(p => p.Second is not null || p.First == "-")
            ? new(days[0], days[1], days[2])
            : row.Refuse(column, row.Text(column), "days to stain / borers / end checks, such as 35 / 60 / 25, with - for none", new DamageDays(null, null, null));
    }

    private static HoldingHeat Holding(TableRow row, string pair)
    {
        var parts = pair.Split(':');
        return parts.Length == 2
            && double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var outside) && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out var heat)
            ? new(outside, heat)
            : row.Refuse("holding_heat_kw", pair, "outside C and kW, such as -5:7.9, parted by semicolons", new HoldingHeat(0.0, 0.0));
    }
}
